// Moves pours by working days: their set dates and finish with them. Nothing else moves.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { asData } from './as-data.ts';
import { movePours } from './move-pours.ts';
import { unknownJob } from './unknown.ts';
import { move } from './plan-whatif.ts';
import { command } from './procedure.ts';
import { code, commandId, pour } from './shapes.ts';

export const pourMove = command({
  name: 'pour.move',
  input: z.strictObject({ commandId, job: code, moves: z.array(move).min(1).max(20) }),
  output: z.strictObject({ pours: z.array(pour) }),
  run: async (book, { job: jobCode, moves }) => {
    const job = await book.job(jobCode);
    if (job === null) return unknownJob(jobCode);
    const moved = movePours(job, await book.pours(jobCode), moves);
    if (!moved.ok) return moved;
    for (const each of moved.value.changed) await book.putPour(jobCode, each);
    return answer({ pours: asData(moved.value.changed) });
  },
});
