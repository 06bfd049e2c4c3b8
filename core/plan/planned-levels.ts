// Levels of stock with the pieces that are planned to come and go: each from its instant on, until another or for good.
import { msOf } from './local-time.ts';
import type { PlannedStock } from './plan-changes.ts';

export interface StockLevel {
  /** Epoch milliseconds; null: from the start of the plan. */
  readonly fromMs: number | null;
  readonly quantity: number;
}

/** @param levels rising in time, the first from the start; @param planned of one component */
export function withPlanned(
  levels: readonly StockLevel[],
  planned: readonly PlannedStock[],
): readonly StockLevel[] {
  if (planned.length === 0) return levels;
  const changes = planned.flatMap(({ quantity, from, to }) => [
    { atMs: msOf(from), by: quantity },
    ...(to === null ? [] : [{ atMs: msOf(to), by: -quantity }]),
  ]);
  const times = new Set<number>([
    ...levels.flatMap(({ fromMs }) => (fromMs === null ? [] : [fromMs])),
    ...changes.map(({ atMs }) => atMs),
  ]);
  const more = (ms: number): number =>
    changes.reduce((sum, { atMs, by }) => (atMs <= ms ? sum + by : sum), 0);
  const made: StockLevel[] = [{ fromMs: null, quantity: levels[0]?.quantity ?? 0 }];
  for (const fromMs of [...times].sort((one, other) => one - other)) {
    const base = levels.findLast((each) => each.fromMs === null || each.fromMs <= fromMs)?.quantity ?? 0;
    const quantity = Math.max(0, base + more(fromMs));
    if (made.at(-1)?.quantity !== quantity) made.push({ fromMs, quantity });
  }
  return made;
}
