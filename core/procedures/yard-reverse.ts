// Takes a movement back by booking its opposite; the first entry stays as it was written.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { momentMs } from '../yard/moment.ts';
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
    await book.appendMovements(
      [
        {
          id,
          component: booked.component,
          quantity: booked.quantity,
          owner: booked.owner,
          from: booked.to,
          to: booked.from,
          condition: booked.conditionAfter,
          conditionAfter: booked.condition,
          reason: 'reversal',
          at: later(at, booked.at),
          who,
          noteNumber: booked.noteNumber,
          remark,
          basis: null,
          basisDate: null,
          reverses,
        },
      ],
      at,
    );
    return answer({ reversal: id });
  },
});

/** What was booked for a time to come is taken back from that time on. */
function later(one: string, other: string): string {
  return (momentMs(one) ?? 0) >= (momentMs(other) ?? 0) ? one : other;
}
