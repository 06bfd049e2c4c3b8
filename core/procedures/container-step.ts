// A step of a container: moved with everything in it, said to be full, part full or empty, weighed.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { fillings } from '../yard/container.ts';
import { moveContainer } from '../yard/container-steps.ts';
import { momentMs } from '../yard/moment.ts';
import { movementsOf } from '../yard/piece-moves.ts';
import type { StockLine } from '../yard/quantities.ts';
import { standingPlace } from './gang-places.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { unknownContainer } from './unknown.ts';

export const containerStep = command({
  name: 'container.step',
  input: z.strictObject({
    commandId,
    container: code,
    /** Where it stands then; it stays where it is, if absent. */
    place: code.optional(),
    filling: z.enum(fillings).optional(),
    /** As weighed with its content. */
    grossGrams: z.int().min(0).max(1_000_000_000).optional(),
    at: instant,
    remark: z.string().trim().max(400).optional(),
  }),
  output: z.strictObject({ container: code, place: code, filling: z.enum(fillings), moved: z.boolean() }),
  run: async (book, input, { at: recordedAt, who }) => {
    const { container: tag, at } = input;
    const container = (await book.containers()).find((each) => each.code === tag);
    if (container === undefined) return unknownContainer(tag);
    const { component, owner, last } = container;
    const place = input.place ?? last.place;
    const filling = input.filling ?? last.filling;
    if ((momentMs(at) ?? 0) < (momentMs(last.at) ?? 0))
      return refuse('step-too-early', `${tag} is at ${last.place} since ${last.at}; ${at} is before that.`, {
        field: 'at',
        hint: 'Maybe the day is wrong, or a clock was set back.',
      });
    const stock = await book.stock(at);
    const content = stock.filter((line) => line.location === tag && line.quantity > 0);
    if (filling === 'empty' && content.length > 0) return notEmpty(tag, content, 'filling');
    const moved = place !== last.place;
    if (moved) {
      if (place === tag) return refuse('moves-nothing', `${tag} cannot stand in itself.`, { field: 'place' });
      const reason = await reasonOf(book, last.place, place);
      if (!reason.ok) return reason;
      if (reason.value === 'return' && content.length > 0) return notEmpty(tag, content, 'place');
      const move = moveContainer(container, place, stock, reason.value);
      if (!move.ok) return move;
      const remark = `Container ${tag}, with what is in it`;
      const booking = { id: input.commandId, at, who, remark, paper: null };
      await book.appendMovements(movementsOf([move.value], booking), recordedAt);
    }
    await book.addContainerStep(
      { code: tag, component, owner },
      {
        at,
        place,
        filling,
        grossGrams: input.grossGrams ?? (moved ? last.grossGrams : null),
        remark: input.remark ?? null,
      },
    );
    return answer({ container: tag, place, filling, moved });
  },
});

/** A container goes back to its supplier and comes from it again; anywhere else it is transferred. */
async function reasonOf(
  book: BookReader,
  from: string,
  to: string,
): Promise<Answer<'transfer' | 'return' | 'delivery'>> {
  const kinds = new Map((await book.locations()).map((each) => [each.code, each.kind]));
  if (kinds.get(to) === 'supplier') return answer('return');
  const where = await standingPlace(book, to);
  if (!where.ok) return where;
  return answer(kinds.get(from) === 'supplier' ? 'delivery' : 'transfer');
}

function notEmpty(tag: string, content: readonly StockLine[], field: 'filling' | 'place') {
  const list = content.map((line) => `${line.quantity} ${line.component}`).join(', ');
  return refuse('not-empty', `${tag} is not empty: ${list} are booked to it.`, {
    field,
    hint: 'Maybe book first where they went.',
  });
}
