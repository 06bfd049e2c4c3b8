// The pieces booked at the places of a count, from which its movements take: ours first, then the suppliers' by code,
// then what is not ours, unless an owner is named. What one movement has taken another cannot take.
import { type Answer, answer, refuse } from '../answer.ts';
import { type Condition, conditions, type Owner, type OwnerKind } from './movement.ts';
import type { StockLine } from './quantities.ts';

export interface TakenPart {
  readonly owner: string;
  readonly condition: Condition;
  readonly quantity: number;
}

export interface PoolWish {
  readonly component: string;
  readonly location: string;
  readonly quantity: number;
  /** Null for whoever's. */
  readonly owner: string | null;
  /** Only in this condition; `first` takes it before others. */
  readonly condition: Condition;
  readonly isConditionFixed: boolean;
}

export interface CountPool {
  readonly take: (wish: PoolWish) => Answer<readonly TakenPart[]>;
}

const ownerOrder: Readonly<Record<OwnerKind, number>> = { ours: 0, supplier: 1, others: 2 };

/** @param stock as booked at the moment at which the lines were counted */
export function countPool(
  stock: readonly StockLine[],
  owners: readonly Pick<Owner, 'code' | 'kind'>[],
): CountPool {
  const rank = new Map(owners.map(({ code, kind }) => [code, ownerOrder[kind]]));
  const left = stock
    .map(({ component, location, owner, condition, quantity }) => ({
      component,
      location,
      owner,
      condition,
      quantity,
    }))
    .sort(
      (one, other) =>
        (rank.get(one.owner) ?? 0) - (rank.get(other.owner) ?? 0) ||
        (one.owner < other.owner ? -1 : one.owner > other.owner ? 1 : 0) ||
        conditions.indexOf(one.condition) - conditions.indexOf(other.condition),
    );
  return {
    take: (wish) => {
      const fits = left.filter(
        (part) =>
          part.component === wish.component &&
          part.location === wish.location &&
          (wish.owner === null || part.owner === wish.owner) &&
          part.quantity > 0,
      );
      const same = fits.filter(({ condition }) => condition === wish.condition);
      const others = wish.isConditionFixed
        ? []
        : fits.filter(({ condition }) => condition !== wish.condition);
      const taken: TakenPart[] = [];
      let wanted = wish.quantity;
      for (const part of [...same, ...others]) {
        const quantity = Math.min(part.quantity, wanted);
        if (quantity === 0) continue;
        part.quantity -= quantity;
        wanted -= quantity;
        taken.push({ owner: part.owner, condition: part.condition, quantity });
      }
      if (wanted === 0) return answer(taken);
      const whose = wish.owner === null ? '' : ` of ${wish.owner}`;
      const how = wish.isConditionFixed ? `, ${wish.condition},` : '';
      return refuse(
        'not-enough-there',
        `${wish.location} had ${wish.quantity - wanted} of ${wish.component}${whose}${how} booked when it was counted; ${wish.quantity} cannot be taken from it.`,
        { field: 'explained', hint: 'Maybe they belong to another owner, or came from another place.' },
      );
    },
  };
}
