// Pieces that are there, taken off one after another, so that no piece is taken twice by one paper. Of the conditions
// that will do the first goes first, and of one condition ours before suppliers'.
import { type Condition, conditions, isLoose, type Location } from './movement.ts';
import type { StockLine } from './quantities.ts';
import { takeFrom, type TakingOrder } from './take-from.ts';

export type PooledLine = Pick<StockLine, 'component' | 'owner' | 'location' | 'condition' | 'quantity'>;

export interface PoolWish {
  readonly component: string;
  readonly quantity: number;
  /** Where they may lie, the first first; anywhere if absent. */
  readonly locations?: readonly string[];
  /** Of one owner only. */
  readonly owner?: string | undefined;
  /** Also what was found and is not ours: pieces that stand in a gang come back with it, whosever they are. */
  readonly isAnyones?: boolean;
  /** In which conditions, the first first; in all if absent. */
  readonly conditions?: readonly Condition[];
}

export interface PiecePool {
  /** As many as there are, at most those wished for. */
  readonly take: (wish: PoolWish) => readonly PooledLine[];
  readonly there: (wish: Omit<PoolWish, 'quantity'>) => number;
}

export function piecePool(
  stock: readonly PooledLine[],
  order: Pick<TakingOrder, 'owners' | 'notOf'>,
): PiecePool {
  const lines = new Map<string, PooledLine[]>();
  for (const line of stock)
    if (line.quantity > 0) lines.set(line.component, [...(lines.get(line.component) ?? []), { ...line }]);
  const fitting = (wish: Omit<PoolWish, 'quantity'>): PooledLine[] =>
    (lines.get(wish.component) ?? []).filter(
      (line) =>
        line.quantity > 0 &&
        (wish.owner === undefined
          ? wish.isAnyones === true || order.notOf?.includes(line.owner) !== true
          : line.owner === wish.owner) &&
        (wish.locations?.includes(line.location) ?? true) &&
        (wish.conditions?.includes(line.condition) ?? true),
    );
  const takeIn = (wish: PoolWish, condition: Condition): readonly PooledLine[] => {
    const some = fitting({ ...wish, conditions: [condition] });
    const quantity = Math.min(wish.quantity, sumOf(some));
    if (quantity === 0) return [];
    const { component, locations, owner } = wish;
    const taken = takeFrom(
      some.map((line) => ({ ...line, basis: null, basisDate: null })),
      { component, quantity },
      {
        owners: order.owners,
        notOf: owner === undefined && wish.isAnyones !== true ? (order.notOf ?? []) : [],
        conditions: [condition],
        ...(locations !== undefined && { locations }),
      },
    );
    if (!taken.ok) throw new Error(taken.error.message);
    const all = lines.get(component) ?? [];
    lines.set(
      component,
      all.map((line) => {
        const of = taken.value.find((each) => isSame(each, line));
        return of === undefined ? line : { ...line, quantity: line.quantity - of.quantity };
      }),
    );
    return taken.value.map((each) => ({ ...each, component }));
  };
  return {
    take: (wish) => {
      const taken: PooledLine[] = [];
      for (const condition of wish.conditions ?? conditions)
        taken.push(...takeIn({ ...wish, quantity: wish.quantity - sumOf(taken) }, condition));
      return taken;
    },
    there: (wish) => sumOf(fitting(wish)),
  };
}

/** Those that lie loose, to be taken for a gang or a load. */
export function loosePieces(
  stock: readonly StockLine[],
  locations: readonly Location[],
): readonly StockLine[] {
  const loose = new Set(locations.filter(({ kind }) => isLoose(kind)).map(({ code }) => code));
  return stock.filter((line) => loose.has(line.location));
}

function isSame(
  one: Omit<PooledLine, 'component' | 'quantity'>,
  other: Omit<PooledLine, 'component' | 'quantity'>,
): boolean {
  return one.owner === other.owner && one.location === other.location && one.condition === other.condition;
}

function sumOf(lines: readonly { readonly quantity: number }[]): number {
  return lines.reduce((sum, line) => sum + line.quantity, 0);
}
