// Quantities are never stored as figures of their own: they are the sum of the ledger's movements.
import type { Basis, Condition, Movement } from './movement.ts';

/** What lies at one location, of one owner, in one condition. Outside locations may go below zero. */
export interface StockLine {
  readonly component: string;
  readonly owner: string;
  readonly location: string;
  readonly condition: Condition;
  readonly quantity: number;
  /**
   * The weakest basis among the opening figures booked here that were not taken back, and the oldest of
   * their dates. Pieces that came here from another location bring none with them.
   */
  readonly basis: Basis | null;
  readonly basisDate: string | null;
}

/** A basis with its date, as a line of stock carries them. */
export interface LineBasis {
  readonly basis: Basis | null;
  readonly basisDate: string | null;
}

const weakestFirst: readonly Basis[] = ['estimated', 'taken-from-list', 'counted'];

/** The weaker basis and the older date of two; null gives way to the other. */
export function weakerBasis(one: LineBasis, other: LineBasis): LineBasis {
  if (one.basis === null) return other;
  if (other.basis === null) return one;
  const isOneWeaker = weakestFirst.indexOf(one.basis) <= weakestFirst.indexOf(other.basis);
  const dates = [one.basisDate, other.basisDate].filter((date) => date !== null).sort();
  return { basis: isOneWeaker ? one.basis : other.basis, basisDate: dates[0] ?? null };
}

/** One text for a component, owner, location and condition. */
export function stockKey(component: string, owner: string, location: string, condition: Condition): string {
  return JSON.stringify([component, owner, location, condition]);
}

interface Sum {
  quantity: number;
  basis: LineBasis;
}

/**
 * The stock after a list of movements, in the order of first appearance, without lines of zero.
 * @param movements in any order: a sum does not depend on it
 */
export function stockAfter(movements: readonly Movement[]): StockLine[] {
  const takenBack = new Set(movements.map((movement) => movement.reverses));
  const sums = new Map<string, Sum>();
  const sumAt = (movement: Movement, location: string, condition: Condition): Sum => {
    const key = stockKey(movement.component, movement.owner, location, condition);
    const sum = sums.get(key) ?? { quantity: 0, basis: { basis: null, basisDate: null } };
    sums.set(key, sum);
    return sum;
  };
  for (const movement of movements) {
    sumAt(movement, movement.from, movement.condition).quantity -= movement.quantity;
    const into = sumAt(movement, movement.to, movement.conditionAfter);
    into.quantity += movement.quantity;
    if (!takenBack.has(movement.id)) into.basis = weakerBasis(into.basis, movement);
  }
  const lines: StockLine[] = [];
  for (const [key, { quantity, basis }] of sums) {
    if (quantity === 0) continue;
    const [component, owner, location, condition] = JSON.parse(key) as [string, string, string, Condition];
    lines.push({
      component,
      owner,
      location,
      condition,
      quantity,
      basis: basis.basis,
      basisDate: basis.basisDate,
    });
  }
  return lines;
}
