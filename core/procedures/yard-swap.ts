// Swaps like pieces of two owners that were taken for each other: so many of each change places, and whose they are
// stays as it was.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { conditions, type Movement } from '../yard/movement.ts';
import { command } from './procedure.ts';
import { code, commandId, instant, quantity } from './shapes.ts';

const side = z.strictObject({ owner: code, location: code, condition: z.enum(conditions) });

export const yardSwap = command({
  name: 'yard.swap',
  input: z.strictObject({
    commandId,
    component: code,
    quantity,
    /** Where the pieces of each owner are booked; after it each is where the other was. */
    one: side,
    other: side,
    at: instant.optional(),
    noteNumber: z.string().max(60).optional(),
    remark: z.string().trim().min(1).max(400),
  }),
  output: z.strictObject({ booked: z.literal(2) }),
  run: async (book, asked, context) => {
    const { one, other, component, quantity: pieces, remark, noteNumber = null } = asked;
    if (one.owner === other.owner)
      return refuse('one-owner', `Both sides belong to ${one.owner}: that is a transfer.`, {
        field: 'other.owner',
      });
    const move = (id: string, from: typeof one, to: typeof one): Movement => ({
      id: `${asked.commandId}/${id}`,
      component,
      quantity: pieces,
      owner: from.owner,
      from: from.location,
      to: to.location,
      condition: from.condition,
      conditionAfter: to.condition,
      reason: 'owner-swap',
      at: asked.at ?? context.at,
      who: context.who,
      noteNumber,
      remark,
      basis: null,
      basisDate: null,
      reverses: null,
      paper: null,
    });
    await book.appendMovements([move('1', one, other), move('2', other, one)], context.at);
    return answer({ booked: 2 as const });
  },
});
