// The changes of a job's plan that were carried out, the newest first.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { planChange } from '../plan/plan-changes.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const changeList = query({
  name: 'change.list',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    changes: z.array(
      z.strictObject({
        applied: z.string(),
        at: instant,
        who: z.string(),
        about: z.string(),
        changes: z.array(planChange),
        takenBackAt: instant.nullable(),
      }),
    ),
  }),
  run: async (book, { job }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const kept = await book.jobEntries(job, 'applied-change');
    return answer({
      changes: kept
        .map(({ id, entry: { at, who, about, changes, takenBackAt } }) => ({
          applied: id,
          at,
          who,
          about,
          changes,
          takenBackAt,
        }))
        .reverse(),
    });
  },
});
