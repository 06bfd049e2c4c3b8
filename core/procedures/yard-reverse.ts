// Takes a movement back by booking its opposite; the first entry stays as it was written.
import { z } from 'zod';
import { command } from './procedure.ts';
import { commandId } from './shapes.ts';

export const yardReverse = command({
  name: 'yard.reverse',
  input: z.strictObject({
    commandId,
    movement: z.string(),
    id: z.string().min(8).max(64),
    remark: z.string().min(1).max(400),
  }),
  output: z.strictObject({ reversal: z.string() }),
  run: () => Promise.reject(new Error('being built')),
});
