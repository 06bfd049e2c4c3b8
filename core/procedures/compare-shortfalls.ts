// Shortfalls of two plans held against each other: of one component, those that overlap in time are the same
// one; what is left over is new or gone.
import { msOf } from '../plan/local-time.ts';
import type { shownShortfalls } from './shown-plan.ts';

type Shortfall = ReturnType<typeof shownShortfalls>[number];

export function compareShortfalls(before: readonly Shortfall[], after: readonly Shortfall[]) {
  const goneShortfalls: Shortfall[] = [];
  const changedShortfalls: { before: Shortfall; after: Shortfall }[] = [];
  const left = new Set(after);
  for (const was of before) {
    const same = [...left].find((each) => isAlike(was, each)) ?? [...left].find((each) => overlap(was, each));
    if (same === undefined) {
      goneShortfalls.push(was);
      continue;
    }
    left.delete(same);
    if (!isAlike(was, same)) changedShortfalls.push({ before: was, after: same });
  }
  return { newShortfalls: after.filter((each) => left.has(each)), goneShortfalls, changedShortfalls };
}

function isAlike(one: Shortfall, other: Shortfall): boolean {
  return (
    one.component === other.component &&
    one.quantity === other.quantity &&
    one.from === other.from &&
    one.to === other.to
  );
}

function overlap(one: Shortfall, other: Shortfall): boolean {
  return (
    one.component === other.component && msOf(one.from) < msOf(other.to) && msOf(other.from) < msOf(one.to)
  );
}
