// Since when pieces lie somewhere in a condition. What leaves goes first in, first out, so what is there now is what
// came last.
import { momentMs } from './moment.ts';
import type { Movement } from './movement.ts';
import type { StockLine } from './quantities.ts';

export interface SinceWhen {
  readonly quantity: number;
  readonly sinceMs: number;
  readonly movement: Movement;
}

/** @param movements of the component and owner at the location, newest first, without what was taken back */
export function sinceWhen(
  line: Pick<StockLine, 'location' | 'condition' | 'quantity'>,
  movements: readonly Movement[],
): readonly SinceWhen[] {
  const lots: SinceWhen[] = [];
  let left = line.quantity;
  for (const movement of movements) {
    if (left <= 0) break;
    const isInto = movement.to === line.location && movement.conditionAfter === line.condition;
    if (!isInto) continue;
    const quantity = Math.min(left, movement.quantity);
    left -= quantity;
    lots.push({ quantity, sinceMs: momentMs(movement.at) ?? 0, movement });
  }
  return lots;
}
