// Breaks a gang down: all its pieces go back to a place, each quantity in the condition it was found in.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { breakDown } from '../yard/gang-moves.ts';
import { nextGangStep } from '../yard/gang-steps.ts';
import { conditions } from '../yard/movement.ts';
import { movementsOf } from '../yard/piece-moves.ts';
import { settleFillings } from './gang-issue.ts';
import { layingPlace } from './gang-places.ts';
import { command } from './procedure.ts';
import { code, commandId, instant, quantity } from './shapes.ts';
import { unknownGang } from './unknown.ts';

export const gangBreak = command({
  name: 'gang.break',
  input: z.strictObject({
    commandId,
    gang: code,
    /** Where its pieces are laid. */
    to: code,
    at: instant,
    /** Of all pieces, or of those that were not worse already. */
    condition: z.enum(conditions).exclude(['scrapped']).default('to-clean'),
    /** Condition by quantity in its place: together exactly what is booked to the gang. */
    lines: z
      .array(
        z.strictObject({ component: code, condition: z.enum(conditions).exclude(['scrapped']), quantity }),
      )
      .max(500)
      .optional(),
    remark: z.string().trim().max(400).optional(),
  }),
  output: z.strictObject({ gang: code, pieces: z.int(), movements: z.int() }),
  run: async (
    book,
    { gang: tag, to, at, condition, lines, remark, commandId: id },
    { at: recordedAt, who },
  ) => {
    const gang = (await book.gangs()).find((each) => each.code === tag);
    if (gang === undefined) return unknownGang(tag);
    const step = nextGangStep(gang, { state: 'broken-down', at, place: to, remark });
    if (!step.ok) return step;
    const place = await layingPlace(book, to);
    if (!place.ok) return place;
    const moves = breakDown(tag, await book.stock(at), { place: place.value, condition }, lines);
    if (!moves.ok) return moves;
    const said = `Broken down from ${gang.last.design}`;
    const movements = movementsOf(moves.value, { id, at, who, remark: said, paper: null });
    await book.appendMovements(movements, recordedAt);
    await settleFillings(book, moves.value, at);
    await book.addGangStep(step.value);
    const count = moves.value.reduce((sum, move) => sum + move.quantity, 0);
    return answer({ gang: tag, pieces: count, movements: movements.length });
  },
});
