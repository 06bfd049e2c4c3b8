// Drops what was fixed: the plan may do otherwise again.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { fixedChoice } from '../plan/choices.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const fixedDrop = command({
  name: 'fixed.drop',
  input: z.strictObject({ commandId, job: code, id: z.string() }),
  output: z.strictObject({ job: code, dropped: fixedChoice }),
  run: async (book, { job, id }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const entry = (await book.jobEntries(job, 'fixed-choice')).find((each) => each.id === id);
    if (entry === undefined)
      return refuse('unknown-choice', `Nothing is fixed on job ${job} under ${id}.`, {
        field: 'id',
        hint: 'Maybe it was dropped already.',
      });
    await book.removeJobEntry({ job, kind: 'fixed-choice', id });
    return answer({ job, dropped: entry.entry });
  },
});
