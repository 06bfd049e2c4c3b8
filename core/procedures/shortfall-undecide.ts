// Takes back what was decided of a shortfall: it is open again.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const shortfallUndecide = command({
  name: 'shortfall.undecide',
  input: z.strictObject({ commandId, job: code, id: z.string() }),
  output: z.null(),
  run: async (book, { job, id }) => {
    const kept = await book.jobEntries(job, 'shortfall-decision');
    if (!kept.some((each) => each.id === id))
      return refuse('unknown-decision', `Nothing is decided of ${id}.`, {
        field: 'id',
        hint: 'Maybe it was taken back already.',
      });
    await book.removeJobEntry({ job, kind: 'shortfall-decision', id });
    return answer(null);
  },
});
