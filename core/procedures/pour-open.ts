// Says of a pour that nobody has set its day yet, or that its day stands. Without a day it is in no plan; its sides, hours and
// finish stay as entered and say how long it takes.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { noPourFacts } from './changed-source.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob, unknownPour } from './unknown.ts';

export const pourOpen = command({
  name: 'pour.open',
  input: z.strictObject({
    commandId,
    job: code,
    pour: code,
    /** True: without a day. */
    open: z.boolean(),
  }),
  output: z.strictObject({ pour: code, open: z.boolean() }),
  run: async (book, { job: jobCode, pour: pourCode, open }) => {
    if ((await book.job(jobCode)) === null) return unknownJob(jobCode);
    if (!(await book.pours(jobCode)).some((each) => each.code === pourCode))
      return unknownPour(pourCode, jobCode);
    const kept = (await book.jobEntries(jobCode, 'pour-facts')).find(({ id }) => id === pourCode);
    const facts = kept?.entry ?? noPourFacts;
    if (facts.dateOpen === open)
      return refuse(
        open ? 'open-already' : 'has-date',
        open ? `Pour ${pourCode} has no date already.` : `Pour ${pourCode} has a date already.`,
        { field: 'open' },
      );
    await book.putJobEntry({ job: jobCode, kind: 'pour-facts', id: pourCode }, { ...facts, dateOpen: open });
    return answer({ pour: pourCode, open });
  },
});
