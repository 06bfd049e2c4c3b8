// What a count says of conditions: pieces booked in one and found in another, and in which condition the pieces are
// that are missing or too many. Of several ways to pair them the first in the order of the conditions is taken, so
// that the same count always gives the same movements.
import type { ByCondition } from './count-figures.ts';
import { type Condition, conditions } from './movement.ts';

export interface ConditionMove {
  readonly from: Condition;
  readonly to: Condition;
  readonly quantity: number;
}

export interface ConditionPart {
  readonly condition: Condition;
  readonly quantity: number;
}

export interface ConditionChanges {
  readonly moves: readonly ConditionMove[];
  /** Booked and not found, in the condition in which they were booked. */
  readonly missing: readonly ConditionPart[];
  /** Found and not booked, in the condition in which they were found. */
  readonly surplus: readonly ConditionPart[];
}

export function conditionChanges(booked: ByCondition, counted: ByCondition): ConditionChanges {
  const fewer: { condition: Condition; quantity: number }[] = [];
  const more: { condition: Condition; quantity: number }[] = [];
  for (const condition of conditions) {
    const by = (counted[condition] ?? 0) - (booked[condition] ?? 0);
    if (by < 0) fewer.push({ condition, quantity: -by });
    if (by > 0) more.push({ condition, quantity: by });
  }
  const moves: ConditionMove[] = [];
  for (const from of fewer)
    for (const to of more) {
      const quantity = Math.min(from.quantity, to.quantity);
      if (quantity === 0) continue;
      moves.push({ from: from.condition, to: to.condition, quantity });
      from.quantity -= quantity;
      to.quantity -= quantity;
    }
  return { moves, missing: someOf(fewer), surplus: someOf(more) };
}

function someOf(parts: readonly ConditionPart[]): readonly ConditionPart[] {
  return parts.filter(({ quantity }) => quantity > 0);
}
