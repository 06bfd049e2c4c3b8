// Takes a booking of a crane back: those hours are for the forms again, or not added any more.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { craneBooking } from '../plan/work/crane-booking.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const craneUnbook = command({
  name: 'crane.unbook',
  input: z.strictObject({ commandId, job: code, id: z.string() }),
  /** What it was, so that it can be entered again. */
  output: z.strictObject({ removed: craneBooking }),
  run: async (book, { job, id }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const kept = (await book.jobEntries(job, 'crane-booking')).find((each) => each.id === id);
    if (kept === undefined)
      return refuse('unknown-booking', `Job ${job} has no booking ${id} of a crane.`, {
        field: 'id',
        hint: 'Maybe it was taken back already.',
      });
    await book.removeJobEntry({ job, kind: 'crane-booking', id });
    return answer({ removed: kept.entry });
  },
});
