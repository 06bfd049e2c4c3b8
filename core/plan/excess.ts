// Held pieces against stock as steps over time: the levels that hire, shortfalls and curves are read from.
import type { Hold } from './holding.ts';
import { levelAt, type Model } from './model.ts';

/** A stretch over which held and stock are constant; up to but not including `to`. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly held: number;
  readonly stock: number;
}

/** The holds of each component, by its place. */
export function holdsByComponent(model: Model, holds: readonly Hold[]): Hold[][] {
  const sorted: Hold[][] = model.codes.map(() => []);
  for (const hold of holds) sorted[hold.component]?.push(hold);
  return sorted;
}

/** The stretches from the first hold to the end of the last; equal neighbours are one. */
export function stretchesOf(model: Model, component: number, holds: readonly Hold[]): Stretch[] {
  const steps = model.stock[component] ?? { times: [], levels: [] };
  const changes = new Map<number, number>();
  let [first, last] = [Infinity, -Infinity];
  for (const { from, to, quantity } of holds) {
    changes.set(from, (changes.get(from) ?? 0) + quantity);
    changes.set(to, (changes.get(to) ?? 0) - quantity);
    first = Math.min(first, from);
    last = Math.max(last, to);
  }
  for (const time of steps.times) if (time > first && time < last) changes.set(time, changes.get(time) ?? 0);
  const times = Array.from(changes.keys()).sort((left, right) => left - right);
  const stretches: Stretch[] = [];
  let held = 0;
  for (const [index, from] of times.entries()) {
    held += changes.get(from) ?? 0;
    const to = times[index + 1];
    if (to === undefined) break;
    const stock = levelAt(steps, from);
    const before = stretches.at(-1);
    if (before !== undefined && before.held === held && before.stock === stock) {
      stretches[stretches.length - 1] = { ...before, to };
    } else stretches.push({ from, to, held, stock });
  }
  return stretches;
}
