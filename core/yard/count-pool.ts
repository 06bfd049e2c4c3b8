// The pieces booked at the places of a count, from which its movements take: ours first, then the suppliers' by code,
// then what is not ours, unless an owner is named. What one movement has taken another cannot take.
import { type Answer, answer, refuse } from '../answer.ts';
import { type Condition, conditions, type Owner } from './movement.ts';
import { type StockLine, stockKey } from './quantities.ts';
import { takeFrom, takingOrder } from './take-from.ts';

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
  readonly condition: Condition;
  /** Only in this condition; else this one goes before others. */
  readonly isConditionFixed: boolean;
}

export interface CountPool {
  readonly take: (wish: PoolWish) => Answer<readonly TakenPart[]>;
}

/** @param stock as booked at the moment at which the lines were counted */
export function countPool(stock: readonly StockLine[], owners: readonly Owner[]): CountPool {
  const order = takingOrder(owners);
  const left = new Map(stock.map((line) => [keyOf(line), line]));
  return {
    take: (wish) => {
      const fits = [...left.values()].filter(({ owner }) => wish.owner === null || owner === wish.owner);
      const rest = wish.isConditionFixed ? [] : conditions.filter((each) => each !== wish.condition);
      const taken = takeFrom(fits, wish, {
        owners: [...order.owners, ...order.notOf],
        conditions: [wish.condition, ...rest],
        locations: [wish.location],
      });
      if (!taken.ok) return notEnough(wish, taken.error.message);
      for (const part of taken.value) {
        const key = keyOf({ ...part, component: wish.component });
        const line = left.get(key);
        if (line !== undefined) left.set(key, { ...line, quantity: line.quantity - part.quantity });
      }
      return answer(taken.value.map(({ owner, condition, quantity }) => ({ owner, condition, quantity })));
    },
  };
}

function keyOf(line: Pick<StockLine, 'component' | 'owner' | 'location' | 'condition'>): string {
  return stockKey(line.component, line.owner, line.location, line.condition);
}

function notEnough({ owner }: PoolWish, message: string) {
  const whose = owner === null ? '' : ` Of ${owner} alone.`;
  return refuse('not-enough-there', `When it was counted: ${message}${whose}`, {
    field: 'explained',
    hint: 'Maybe they belong to another owner, or came from another place.',
  });
}
