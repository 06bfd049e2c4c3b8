// What the quantity of a component rests on: of all places where its ready pieces lie, the weakest way in which a
// figure was got, and the oldest of their dates.
import { Temporal } from 'temporal-polyfill';
import { lastCounted } from './last-counted.ts';
import { type Basis, isInHand, isReady, type Location, type Owner } from './movement.ts';
import { type StockLine, weakerBasis } from './quantities.ts';
import type { StockCount } from './stock-count.ts';

export interface ComponentFigure {
  readonly basis: Basis;
  /** YYYY-MM-DD. */
  readonly date: string | null;
  readonly isOld: boolean;
}

export interface FigureFacts {
  /** When the plan begins, and now: what was moved since keeps what it rested on. */
  readonly stock: readonly StockLine[];
  readonly counts: readonly Pick<StockCount, 'number' | 'result'>[];
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
  readonly oldAfterDays: number;
  /** YYYY-MM-DD */
  readonly today: string;
}

/** Components whose quantities rest on no figure, only on movements, are not in it. */
export function componentFigures(facts: FigureFacts): ReadonlyMap<string, ComponentFigure> {
  const inHand = new Set(facts.locations.filter(({ kind }) => isInHand(kind)).map(({ code }) => code));
  const notOurs = new Set(facts.owners.filter(({ kind }) => kind === 'others').map(({ code }) => code));
  const counts = facts.stock.filter(
    (line) => isReady(line.condition) && inHand.has(line.location) && !notOurs.has(line.owner),
  );
  const figures = new Map<string, { basis: Basis | null; basisDate: string | null }>();
  for (const { component, basis, date } of lastCounted(counts, facts.counts)) {
    const here = { basis, basisDate: date };
    figures.set(component, weakerBasis(figures.get(component) ?? here, here));
  }
  return new Map(
    [...figures].flatMap(([component, { basis, basisDate: date }]) =>
      basis === null ? [] : [[component, { basis, date, isOld: isOld(date, facts) }] as const],
    ),
  );
}

function isOld(date: string | null, { today, oldAfterDays }: FigureFacts): boolean {
  if (date === null) return false;
  const age = Temporal.PlainDate.from(date).until(today, { largestUnit: 'days' }).days;
  return age > oldAfterDays;
}
