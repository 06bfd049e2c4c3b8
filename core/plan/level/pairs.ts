// Two activities that together need more of a resource than there is cannot overlap: where one cannot come first, it comes
// second (immediate selection of disjunctive pairs: Carlier and Pinson, Management Science 35 (1989) 164-176).
import type { Network } from './network.ts';
import type { Narrowed, Windows } from './windows.ts';

/** Pairs that cannot overlap and that no order forces apart; each as two entries. */
export function pairsApart({ count, needs, quantity, capacity, resources, after }: Network): Int32Array {
  const demand = new Float64Array(count * resources);
  for (let each = 0; each < count; each += 1)
    for (let row = needs.from[each] ?? 0; row < (needs.from[each + 1] ?? 0); row += 1)
      demand[each * resources + (needs.of[row] ?? 0)] = quantity[row] ?? 0;
  const tooMuch = (one: number, other: number): boolean => {
    for (let resource = 0; resource < resources; resource += 1) {
      const sum = (demand[one * resources + resource] ?? 0) + (demand[other * resources + resource] ?? 0);
      if (sum > (capacity[resource] ?? 0)) return true;
    }
    return false;
  };
  const isNext = (one: number, other: number): boolean =>
    after.of.subarray(after.from[one], after.from[one + 1]).includes(other);
  const pairs: number[] = [];
  for (let one = 0; one < count; one += 1)
    for (let other = one + 1; other < count; other += 1)
      if (tooMuch(one, other) && !isNext(one, other) && !isNext(other, one)) pairs.push(one, other);
  return Int32Array.from(pairs);
}

export function byPairs({ duration }: Network, pairs: Int32Array, { earliest, latest }: Windows): Narrowed {
  let narrowed: Narrowed = 'no';
  for (let at = 0; at < pairs.length; at += 2) {
    const [one, other] = [pairs[at] ?? 0, pairs[at + 1] ?? 0];
    const oneEnds = (earliest[one] ?? 0) + (duration[one] ?? 0);
    const otherEnds = (earliest[other] ?? 0) + (duration[other] ?? 0);
    const oneFirst = oneEnds <= (latest[other] ?? 0);
    const otherFirst = otherEnds <= (latest[one] ?? 0);
    if (oneFirst && otherFirst) continue;
    if (!oneFirst && !otherFirst) return 'impossible';
    const [first, second, firstEnds] = oneFirst ? [one, other, oneEnds] : [other, one, otherEnds];
    if (firstEnds > (earliest[second] ?? 0)) {
      earliest[second] = firstEnds;
      narrowed = 'yes';
    }
    const until = (latest[second] ?? 0) - (duration[first] ?? 0);
    if (until < (latest[first] ?? 0)) {
      latest[first] = until;
      narrowed = 'yes';
    }
    if ((earliest[second] ?? 0) > (latest[second] ?? 0) || (earliest[first] ?? 0) > (latest[first] ?? 0))
      return 'impossible';
  }
  return narrowed;
}
