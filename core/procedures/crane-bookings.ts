// What a job's cranes are booked for besides the forms, what is lost to wind, and hours that were added.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { msOf } from '../plan/local-time.ts';
import { craneBooking } from '../plan/work/crane-booking.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const craneBookings = query({
  name: 'crane.bookings',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    bookings: z.array(z.strictObject({ id: z.string(), booking: craneBooking })),
  }),
  run: async (book, { job }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const kept = await book.jobEntries(job, 'crane-booking');
    const bookings = kept.map(({ id, entry }) => ({ id, booking: entry }));
    bookings.sort((one, other) => msOf(one.booking.from) - msOf(other.booking.from));
    return answer({ bookings });
  },
});
