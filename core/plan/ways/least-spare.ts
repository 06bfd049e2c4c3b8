// How many pieces of a component a plan leaves to spare over a stretch of time: the least of stock less what is held.
import type { CurveStep } from '../curves.ts';
import { msOf } from '../local-time.ts';

interface Level {
  /** ISO 8601; null: from the beginning. */
  readonly from: string | null;
  readonly quantity: number;
}

/** @param held and @param stock rise in time; before the first of the stock there is none */
export function leastSpare(
  held: readonly CurveStep[],
  stock: readonly Level[],
  span: { readonly from: string; readonly to: string },
): number {
  const [from, to] = [msOf(span.from), msOf(span.to)];
  const steps = [
    ...held.map((step) => ({ at: msOf(step.from), what: 'held' as const, quantity: step.quantity })),
    ...stock.map((level) => ({
      at: level.from === null ? -Infinity : msOf(level.from),
      what: 'stock' as const,
      quantity: level.quantity,
    })),
  ].toSorted((one, other) => one.at - other.at);
  const now = { held: 0, stock: 0 };
  let least = Infinity;
  let place = 0;
  const enter = (until: number): void => {
    for (let step = steps[place]; step !== undefined && step.at <= until; step = steps[(place += 1)])
      now[step.what] = step.quantity;
  };
  enter(from);
  least = now.stock - now.held;
  for (let step = steps[place]; step !== undefined && step.at < to; step = steps[place]) {
    enter(step.at);
    least = Math.min(least, now.stock - now.held);
  }
  return least;
}
