// Takes a movement back by booking its opposite; the first entry stays as it was written.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { reversalOf } from '../yard/movement.ts';
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
  run: async (book, { movement: reverses, id, remark }, { at, who }) => {
    const booked = await book.movement(reverses);
    if (booked === null)
      return refuse('unknown-movement', `There is no movement ${reverses} in this book.`, {
        field: 'movement',
      });
    // Taken back from the moment on at which it was said to happen: it never did. When it was taken back, the
    // ledger notes by itself.
    const reversal = reversalOf(booked, { id, at: booked.at, who, remark });
    await book.appendMovements([reversal], at);
    return answer({ reversal: id });
  },
});
