// What somebody decided of a shortfall: to leave it, with the reason, or to have the pieces on the hire list. It stands as
// long as the shortfall is no greater than it was then: one that grew comes back.
import { z } from 'zod';
import { msOf } from '../plan/local-time.ts';
import type { KeptEntry } from '../plan/job-entries.ts';
import { instant } from './shapes.ts';
import type { ShownShortfall } from './ways-shapes.ts';

export const shownDecision = z.strictObject({
  /** The shortfall as it is now. */
  shortfall: z.string(),
  /** Of the decision, to take it back by. */
  id: z.string(),
  decision: z.enum(['ignored', 'hire-list']),
  reason: z.string(),
  who: z.string(),
  at: instant,
  /** How many were short then. */
  quantity: z.int(),
  /** More are short now, or for longer: what was decided does not hold any more. */
  hasGrown: z.boolean(),
});
export type ShownDecision = z.input<typeof shownDecision>;

/** The latest decision of each shortfall; the same one is of the same component and overlaps in time. */
export function decisionsOf(
  shortfalls: readonly ShownShortfall[],
  decisions: readonly KeptEntry<'shortfall-decision'>[],
): ShownDecision[] {
  return shortfalls.flatMap((shortfall) => {
    const [from, to] = [msOf(shortfall.from), msOf(shortfall.to)];
    const own = decisions
      .filter(
        ({ entry }) =>
          entry.component === shortfall.component && msOf(entry.from) < to && msOf(entry.to) > from,
      )
      .toSorted(
        (one, other) => covered(other, from, to) - covered(one, from, to) || other.number - one.number,
      )[0];
    if (own === undefined) return [];
    const { decision, reason, who, at, quantity } = own.entry;
    const hasGrown = shortfall.quantity > quantity || from < msOf(own.entry.from) || to > msOf(own.entry.to);
    return [{ shortfall: shortfall.id, id: own.id, decision, reason, who, at, quantity, hasGrown }];
  });
}

/** How much of the stretch a decision speaks of. */
function covered({ entry }: KeptEntry<'shortfall-decision'>, from: number, to: number): number {
  return Math.min(to, msOf(entry.to)) - Math.max(from, msOf(entry.from));
}
