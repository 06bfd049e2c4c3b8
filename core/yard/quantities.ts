// Quantities are never stored as figures of their own: they are the sum of the ledger's movements.
import type { Basis, Condition, Movement } from './movement.ts';

/** What lies at one location, of one owner, in one condition. Outside locations may go below zero. */
export interface StockLine {
  readonly component: string;
  readonly owner: string;
  readonly location: string;
  readonly condition: Condition;
  readonly quantity: number;
  /** The weakest basis among the opening figures this quantity rests on, and their oldest date. */
  readonly basis: Basis | null;
  readonly basisDate: string | null;
}

const weakest: readonly Basis[] = ['estimated', 'taken-from-list', 'counted'];

interface Sum {
  quantity: number;
  basis: Basis | null;
  basisDate: string | null;
}

/**
 * The stock after a list of movements, in the order of first appearance, without lines of zero.
 * @param movements in any order: a sum does not depend on it
 */
export function stockAfter(movements: readonly Movement[]): StockLine[] {
  const sums = new Map<string, Sum>();
  const add = (movement: Movement, location: string, condition: Condition, sign: 1 | -1): void => {
    const key = JSON.stringify([movement.component, movement.owner, location, condition]);
    const sum = sums.get(key) ?? { quantity: 0, basis: null, basisDate: null };
    sum.quantity += sign * movement.quantity;
    if (sign === 1) noteBasis(sum, movement);
    sums.set(key, sum);
  };
  for (const movement of movements) {
    add(movement, movement.from, movement.condition, -1);
    add(movement, movement.to, movement.conditionAfter, 1);
  }
  const lines: StockLine[] = [];
  for (const [key, sum] of sums) {
    if (sum.quantity === 0) continue;
    const [component, owner, location, condition] = JSON.parse(key) as [string, string, string, Condition];
    lines.push({ component, owner, location, condition, ...sum });
  }
  return lines;
}

function noteBasis(sum: Sum, movement: Movement): void {
  if (movement.basis === null) return;
  if (sum.basis === null || weakest.indexOf(movement.basis) < weakest.indexOf(sum.basis))
    sum.basis = movement.basis;
  if (sum.basisDate === null || (movement.basisDate !== null && movement.basisDate < sum.basisDate))
    sum.basisDate = movement.basisDate;
}
