// What an issue of pieces to a gang or a pour rests on: stock at its moment, whose pieces go first, which places they
// may come from; and what taking them does to the containers they lay in.
import { type Answer, answer } from '../answer.ts';
import type { BookReader, BookWriter } from '../book/book.ts';
import { fillingAfter } from '../yard/container.ts';
import type { PieceMove, Pieces } from '../yard/piece-moves.ts';
import type { Issue } from '../yard/piece-moves.ts';
import { takingOrder } from '../yard/take-from.ts';
import { loosePlaces } from './gang-places.ts';

/** @param owners whose pieces go before all others, in this order */
export async function readIssue(
  book: BookReader,
  given: {
    readonly from: string;
    readonly at?: string | undefined;
    readonly owners?: readonly string[] | undefined;
    readonly pieces: Pieces;
  },
): Promise<Answer<Issue>> {
  const from = await loosePlaces(book, given.from);
  if (!from.ok) return from;
  const [stock, owners] = await Promise.all([book.stock(given.at), book.owners()]);
  const order = takingOrder(owners);
  const first = (given.owners ?? []).filter((each) => order.owners.includes(each));
  return answer({
    stock,
    pieces: given.pieces,
    from: from.value,
    order: { ...order, owners: [...new Set([...first, ...order.owners])] },
  });
}

/** A container that pieces were taken from is not full any more. To be called after the movements were appended. */
export async function settleFillings(
  book: BookWriter,
  moves: readonly PieceMove[],
  at: string,
): Promise<void> {
  const touched = new Set(moves.flatMap(({ from, to }) => [from, to]));
  const containers = (await book.containers()).filter((each) => touched.has(each.code));
  if (containers.length === 0) return;
  const stock = await book.stock();
  for (const { code, component, owner, last } of containers) {
    const holds = stock.some((line) => line.location === code && line.quantity > 0);
    const filling = fillingAfter(
      last.filling,
      holds,
      moves.some((move) => move.to === code),
    );
    if (filling === last.filling) continue;
    const { place } = last;
    await book.addContainerStep(
      { code, component, owner },
      { at, place, filling, grossGrams: null, remark: null },
    );
  }
}
