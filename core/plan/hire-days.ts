// Days of hire: the sum over the calendar days of the greatest excess of held over stock on each.
import type { Stretch } from './excess.ts';
import { dayStarts, type Model } from './model.ts';

/** Piece-days short: a piece short for any part of a day is short for the day. */
export function excessDays(model: Model, stretches: readonly Stretch[]): number {
  const short = stretches.filter(({ held, stock }) => held > stock);
  const [first, last] = [short[0], short.at(-1)];
  if (first === undefined || last === undefined) return 0;
  const days = dayStarts(model, first.from, last.to);
  let sum = 0;
  let day = 0;
  let most = 0;
  for (const { from, to, held, stock } of short) {
    while ((days[day + 1] ?? Infinity) <= from) {
      sum += most;
      most = 0;
      day += 1;
    }
    most = Math.max(most, held - stock);
    while ((days[day + 1] ?? Infinity) < to) {
      sum += most;
      most = held - stock;
      day += 1;
    }
  }
  return sum + most;
}
