// Takes a pour out of a job. Refused while another pour comes after it.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { asData } from './as-data.ts';
import { unknownPour } from './unknown.ts';
import { command } from './procedure.ts';
import { code, commandId, pour } from './shapes.ts';

export const pourRemove = command({
  name: 'pour.remove',
  input: z.strictObject({ commandId, job: code, pour: code }),
  /** The pour as it was, so that it can be put back. */
  output: z.strictObject({ removed: pour }),
  run: async (book, { job, pour: wanted }) => {
    const pours = await book.pours(job);
    const removed = pours.find((each) => each.code === wanted);
    if (removed === undefined) return unknownPour(wanted, job);
    const later = pours.find((each) => each.after.includes(wanted));
    if (later !== undefined)
      return refuse('pour-needed', `Pour ${later.code} comes after ${wanted}, so ${wanted} stays.`, {
        field: 'pour',
        hint: `Maybe take ${wanted} out of what ${later.code} comes after first.`,
      });
    await book.removePour(job, wanted);
    return answer({ removed: asData(removed) });
  },
});
