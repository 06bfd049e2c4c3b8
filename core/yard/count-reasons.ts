// The reasons under which the ledger keeps what a count found.
import type { Condition, Reason } from './movement.ts';
import type { Explanation } from './stock-count.ts';

/** Of the movement that an explanation becomes, where it becomes one. */
export function reasonOf(how: Explanation): Reason {
  if (how === 'lost') return 'lost';
  if (how === 'found' || how === 'not-ours') return 'found';
  if (how === 'scrapped') return 'scrap';
  return how === 'owner-mixed' ? 'owner-swap' : 'transfer';
}

/** By what the pieces turned into; those that turned ready again, by what they had been. */
export function conditionReason(from: Condition, to: Condition): Reason {
  const told = to === 'ready' || to === 'ready-hidden' ? from : to;
  if (told === 'scrapped') return 'scrap';
  if (told === 'quarantine') return 'quarantine';
  return told === 'to-clean' ? 'clean' : 'repair';
}
