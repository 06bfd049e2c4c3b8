// What is left of a component over time: what there is less what is held.

export interface Level {
  /** Epoch milliseconds; the quantity lasts until the next. */
  readonly fromMs: number;
  readonly quantity: number;
}

/** Both rising by time and nothing before their first; the answer begins before all time. */
export function leftOver(stock: readonly Level[], held: readonly Level[]): Level[] {
  const times = [...new Set([-Infinity, ...[...stock, ...held].map(({ fromMs }) => fromMs)])];
  return times
    .sort((one, other) => (one < other ? -1 : 1))
    .map((fromMs) => ({ fromMs, quantity: levelAt(stock, fromMs) - levelAt(held, fromMs) }));
}

function levelAt(levels: readonly Level[], at: number): number {
  return levels.findLast(({ fromMs }) => fromMs <= at)?.quantity ?? 0;
}
