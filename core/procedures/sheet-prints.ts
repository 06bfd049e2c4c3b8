// The printings of a job's sheets that were kept, the newest first: revision, when, by whom, who got it.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const sheetPrints = query({
  name: 'sheet.prints',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    prints: z.array(
      z.strictObject({
        id: z.string(),
        kind: z.enum(['week', 'day', 'shortfalls']),
        of: z.string(),
        revision: z.int(),
        at: instant,
        who: z.string(),
        given: z.array(z.string()),
      }),
    ),
  }),
  run: async (book, { job }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const prints = await book.jobEntries(job, 'sheet-print');
    return answer({
      prints: prints.toReversed().map(({ id, entry: { kind, of, revision, at, who, given } }) => ({
        id,
        kind,
        of,
        revision,
        at,
        who,
        given,
      })),
    });
  },
});
