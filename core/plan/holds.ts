// A pour on hold (a test failed, a query is open) keeps its set standing: it is not stripped before the hold is taken to
// end, and where nobody knows when that is, not before everything else of the plan is done.
import { msOf } from './local-time.ts';
import { pourTimes } from './pour-times.ts';
import type { Job, Pour } from './pours.ts';

export interface Held {
  /** Until when it is taken to last; null where nobody knows. */
  readonly hold: { readonly until: string | null } | null;
}

/** Until when each pour on hold keeps standing, epoch milliseconds, by its code. */
export function heldUntil(
  pours: readonly Pour[],
  job: Job,
  facts: ReadonlyMap<string, Held>,
): ReadonlyMap<string, number> {
  const holds = pours.flatMap((pour) => {
    const hold = facts.get(pour.code)?.hold ?? null;
    return hold === null ? [] : [{ code: pour.code, until: hold.until === null ? null : msOf(hold.until) }];
  });
  if (holds.length === 0) return new Map();
  const known = new Map(holds.flatMap(({ code, until }) => (until === null ? [] : [[code, until] as const])));
  const end = Math.max(...pours.map((pour) => pourTimes(pour, job, known.get(pour.code)).free));
  return new Map(holds.map(({ code, until }) => [code, until ?? end]));
}
