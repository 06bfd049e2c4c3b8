// Moves pours by working days: their set dates and finish with them. Nothing else moves.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { asData } from './as-data.ts';
import { movePours } from './move-pours.ts';
import { unknownJob } from './unknown.ts';
import { move } from './plan-whatif.ts';
import { command } from './procedure.ts';
import { code, commandId, pour } from './shapes.ts';
import { readWorkingJob } from './working-job.ts';

export const pourMove = command({
  name: 'pour.move',
  input: z.strictObject({ commandId, job: code, moves: z.array(move).min(1).max(20) }),
  /** `before` puts them back exactly: a pour moved off a day off does not come back to it by working days. */
  output: z.strictObject({ pours: z.array(pour), before: z.array(pour) }),
  run: async (book, { job: jobCode, moves }) => {
    const working = await readWorkingJob(book, jobCode);
    if (working === null) return unknownJob(jobCode);
    const pours = await book.pours(jobCode);
    const moved = movePours(working.job, pours, moves);
    if (!moved.ok) return moved;
    const { changed } = moved.value;
    for (const each of changed) await book.putPour(jobCode, each);
    const before = pours.filter((each) => changed.some(({ code: of }) => of === each.code));
    return answer({ pours: asData(changed), before: asData(before) });
  },
});
