// What each hook carries. A gang is rigid: of more than two legs, two may take all of it (rigging manuals of the
// US Navy and others), so more count only where rigging that equalises them is named. Two hooks carry by
// their lever arms about the centre of gravity.
import type { Ratio } from '../units/exact.ts';

/**
 * Grams on every hook, as exact fractions, in the order of `positionsNm`. A centre of gravity outside two
 * hooks gives one of them less than nothing.
 */
export function hookLoads(
  load: Ratio,
  positionsNm: readonly number[],
  centre: Ratio,
  equalised: boolean,
): readonly Ratio[] {
  const [one = 0, other = 0] = positionsNm;
  if (positionsNm.length === 2)
    return [leverShare(load, one, other, centre), leverShare(load, other, one, centre)];
  return evenLoads(load, positionsNm.length, equalised);
}

/** Hooks whose places are not known share evenly; more than two that are not equalised count half each. */
export function evenLoads(load: Ratio, count: number, equalised: boolean): readonly Ratio[] {
  const legs = count > 2 && !equalised ? 2 : count;
  const share = { over: load.over, under: load.under * BigInt(legs) };
  return Array.from({ length: count }, () => share);
}

/** The hook at `at` carries load x (other - centre) / (other - at). */
function leverShare(load: Ratio, at: number, other: number, centre: Ratio): Ratio {
  const over = load.over * (BigInt(other) * centre.under - centre.over);
  const under = load.under * BigInt(other - at) * centre.under;
  return under < 0n ? { over: -over, under: -under } : { over, under };
}

/** The middle between the outer hooks. */
export function middleOf(positionsNm: readonly number[]): Ratio {
  return { over: BigInt(Math.min(...positionsNm)) + BigInt(Math.max(...positionsNm)), under: 2n };
}

/** Is the centre of gravity left of the first hook or right of the last? */
export function isOutside(centre: Ratio, positionsNm: readonly number[]): boolean {
  return (
    centre.over < BigInt(Math.min(...positionsNm)) * centre.under ||
    centre.over > BigInt(Math.max(...positionsNm)) * centre.under
  );
}

/** Do hooks that share evenly have their middle off the centre of gravity? */
export function isOffMean(centre: Ratio, positionsNm: readonly number[]): boolean {
  const sum = positionsNm.reduce((all, at) => all + BigInt(at), 0n);
  return sum * centre.under !== centre.over * BigInt(positionsNm.length);
}

export function isGreater(one: Ratio, other: Ratio): boolean {
  return one.over * other.under > other.over * one.under;
}
