// Books hours of a crane: for another trade, lost to wind, or added for the forms. An id that is there is entered anew.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { msOf } from '../plan/local-time.ts';
import { craneBooking } from '../plan/work/crane-booking.ts';
import { readJobPlanning } from './job-planning.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const craneBook = command({
  name: 'crane.book',
  input: z.strictObject({ commandId, job: code, booking: craneBooking, id: z.string().optional() }),
  output: z.strictObject({ id: z.string() }),
  run: async (book, { commandId: made, job, booking, id = made }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    if (msOf(booking.to) <= msOf(booking.from))
      return refuse(
        'booking-without-hours',
        `The booking of ${booking.crane} ends at ${booking.to}, not after ${booking.from}.`,
        {
          field: 'booking.to',
          hint: 'Maybe the two are exchanged.',
        },
      );
    const { settings } = await readJobPlanning(book, job);
    const known = [...settings.cranes, ...(await book.cranes()).map((each) => ({ crane: each.code }))];
    if (!known.some(({ crane }) => crane === booking.crane))
      return refuse('unknown-crane', `There is no crane ${booking.crane}.`, {
        field: 'booking.crane',
        hint: `Maybe ${known[0]?.crane ?? 'its chart is to be entered first'}.`,
      });
    await book.putJobEntry({ job, kind: 'crane-booking', id }, booking);
    return answer({ id });
  },
});
