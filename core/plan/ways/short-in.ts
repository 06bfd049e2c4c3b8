// How many pieces of a component are short while a shortfall lasts, and where a plan has more short than another: held
// against each other moment by moment, since one stretch may split or two may join.
import type { Shortfall } from '../contract.ts';
import { msOf } from '../local-time.ts';

type Stretch = Pick<Shortfall, 'component' | 'from' | 'to' | 'quantity'>;

/** The most pieces short at one moment of the stretch; 0 where it is gone. */
export function shortIn(shortfalls: readonly Stretch[], { component, from, to }: Stretch): number {
  const [begin, end] = [msOf(from), msOf(to)];
  return shortfalls
    .filter((each) => each.component === component && msOf(each.from) < end && msOf(each.to) > begin)
    .reduce((most, { quantity }) => Math.max(most, quantity), 0);
}

/** Stretches of the later plan in which, at some moment, more is short than before. */
export function moreShort<S extends Stretch>(before: readonly Stretch[], after: readonly S[]): readonly S[] {
  const byComponent = Map.groupBy(before, ({ component }) => component);
  return after.filter((each) => isMore(each, byComponent.get(each.component) ?? []));
}

function isMore(each: Stretch, before: readonly Stretch[]): boolean {
  const end = msOf(each.to);
  // What was short at least as much covers the time from here on.
  let at = msOf(each.from);
  const as = before
    .filter(({ quantity }) => quantity >= each.quantity)
    .map(({ from, to }) => [msOf(from), msOf(to)] as const)
    .toSorted(([one], [other]) => one - other);
  for (const [from, to] of as) if (from <= at && to > at) at = to;
  return at < end;
}
