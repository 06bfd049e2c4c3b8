// Shortfalls as bars under the days: a lane a component, in the order in which they first run short.
import type { Shortfall } from './board-types.ts';
import type { DayScale } from './day-scale.ts';

export interface Lane {
  readonly component: string;
  readonly name: string;
  readonly shortfalls: readonly Shortfall[];
  /** The most that are short at once. */
  readonly most: number;
}

export function lanesOf(shortfalls: readonly Shortfall[], scale: DayScale): readonly Lane[] {
  const seen = shortfalls.filter((one) => scale.shows(Date.parse(one.from), Date.parse(one.to)));
  const byComponent = Map.groupBy(seen, (one) => one.component);
  return [...byComponent]
    .map(([component, list]) => ({
      component,
      name: list[0]?.name ?? component,
      shortfalls: list,
      most: Math.max(...list.map((one) => one.quantity)),
      firstMs: Math.min(...list.map((one) => Date.parse(one.from))),
    }))
    .sort((one, other) => one.firstMs - other.firstMs || other.most - one.most)
    .map(({ component, name, shortfalls: list, most }) => ({ component, name, shortfalls: list, most }));
}
