// Stock as a plan sees it: by component, how many pieces are ready and in hand from each moment on. What
// is dirty, damaged, set apart, away or lost does not count, whoever owns it.
import { isInHand, isReady, type Basis, type Location, type Movement } from './movement.ts';
import type { StockLine } from './quantities.ts';

export interface ReadyLevel {
  /** ISO 8601 with offset; null: from the start of the plan. */
  readonly from: string | null;
  readonly quantity: number;
}

export interface ReadyStock {
  readonly levels: readonly ReadyLevel[];
  /** The weakest basis of the opening figures under the first level; null where it rests on none. */
  readonly basis: Basis | null;
}

const byWeakness: readonly Basis[] = ['estimated', 'taken-from-list', 'counted'];

/**
 * @param start quantities when the plan begins
 * @param later movements after that moment, oldest first; a level changes at each of them
 * @param at epoch milliseconds of a movement's time, to order and join movements of one moment
 */
export function readyStock(
  start: readonly StockLine[],
  later: readonly Movement[],
  locations: readonly Location[],
  at: (movement: Movement) => number,
): Map<string, ReadyStock> {
  const inHand = new Set(locations.filter((each) => isInHand(each.kind)).map((each) => each.code));
  const levels = new Map<string, { levels: ReadyLevel[]; basis: Basis | null; lastMs: number }>();
  const entry = (component: string) => {
    const known = levels.get(component);
    if (known !== undefined) return known;
    const made = { levels: [{ from: null, quantity: 0 }] as ReadyLevel[], basis: null, lastMs: -Infinity };
    levels.set(component, made);
    return made;
  };
  for (const line of start) {
    if (!isReady(line.condition) || !inHand.has(line.location)) continue;
    const stock = entry(line.component);
    stock.levels = [{ from: null, quantity: (stock.levels[0]?.quantity ?? 0) + line.quantity }];
    stock.basis = weaker(stock.basis, line.basis);
  }
  for (const movement of later) {
    const change =
      (isReady(movement.conditionAfter) && inHand.has(movement.to) ? movement.quantity : 0) -
      (isReady(movement.condition) && inHand.has(movement.from) ? movement.quantity : 0);
    if (change === 0) continue;
    const stock = entry(movement.component);
    const quantity = (stock.levels.at(-1)?.quantity ?? 0) + change;
    if (stock.lastMs === at(movement)) stock.levels.pop();
    stock.levels.push({ from: movement.at, quantity });
    stock.lastMs = at(movement);
    stock.basis = weaker(stock.basis, movement.basis);
  }
  return levels;
}

function weaker(one: Basis | null, other: Basis | null): Basis | null {
  if (one === null) return other;
  if (other === null) return one;
  return byWeakness.indexOf(one) <= byWeakness.indexOf(other) ? one : other;
}
