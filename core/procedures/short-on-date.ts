// What is short on a day: of each component the most at any time of it.
import { msOf } from '../plan/local-time.ts';

interface Short {
  readonly component: string;
  readonly name: string;
  readonly quantity: number;
  readonly from: string;
  readonly to: string;
}

/** @param day from its first moment up to that of the next, epoch milliseconds */
export function shortOnDate(
  shortfalls: readonly Short[],
  day: { readonly from: number; readonly to: number },
): readonly Short[] {
  const most = new Map<string, Short>();
  for (const { component, name, quantity, from, to } of shortfalls) {
    if (msOf(from) >= day.to || msOf(to) <= day.from) continue;
    const known = most.get(component);
    if (known === undefined || known.quantity < quantity)
      most.set(component, { component, name, quantity, from, to });
  }
  return [...most.values()].sort((one, other) => (one.component < other.component ? -1 : 1));
}
