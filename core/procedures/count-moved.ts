// What moved at the places of a count since it began: listed beside it, since a figure counted in between is held
// against what was booked at its own moment.
import type { z } from 'zod';
import type { BookReader } from '../book/book.ts';
import type { CountDifference } from '../yard/count-differences.ts';
import { momentMs } from '../yard/moment.ts';
import type { StockCount } from '../yard/stock-count.ts';
import type { movedMeanwhile } from './count-shapes.ts';

export async function movedDuring(
  book: BookReader,
  count: StockCount,
  differences: readonly CountDifference[],
): Promise<z.input<typeof movedMeanwhile>[]> {
  const end = count.result === null ? Number.MAX_SAFE_INTEGER : (momentMs(count.result.at) ?? 0);
  const moved = await book.movementsAfter(count.startedAt);
  return moved.flatMap((movement) => {
    const { number, component, owner, quantity, from, to, at, who, noteNumber, paper } = movement;
    if (paper === count.id || movement.reversedBy !== null || movement.reverses !== null) return [];
    const ms = momentMs(at) ?? 0;
    const line = differences.find(
      (each) =>
        each.component === component &&
        (each.location === from || each.location === to) &&
        (each.owner === null || each.owner === owner),
    );
    if (line === undefined || ms > end) return [];
    const countedAt = line.stands === null ? null : momentMs(line.stands.at);
    return [
      {
        number,
        component,
        owner,
        quantity,
        from,
        to,
        at,
        who,
        noteNumber,
        isAfter: countedAt !== null && ms > countedAt,
      },
    ];
  });
}
