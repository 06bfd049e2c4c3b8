// Moves pours by working days: their set dates and finish with them. Nothing else moves.
import { z } from 'zod';
import { move } from './plan-whatif.ts';
import { command } from './procedure.ts';
import { code, commandId, pour } from './shapes.ts';

export const pourMove = command({
  name: 'pour.move',
  input: z.strictObject({ commandId, job: code, moves: z.array(move).min(1).max(20) }),
  output: z.strictObject({ pours: z.array(pour) }),
  run: () => Promise.reject(new Error('being built')),
});
