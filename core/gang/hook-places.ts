// Where lifting hooks may stand and which of those places they take.
import type { Ratio } from '../units/exact.ts';
import type { PanelJoint } from './joints.ts';
import type { Gang } from './placed.ts';

export type HookPlace = 'panel-joint' | 'cross-member' | 'top-member';

/** Where hooks may stand when the table does not say. */
export const usualHookPlaces: readonly HookPlace[] = ['panel-joint', 'cross-member'];

/**
 * Places along the top, from left to right, each once: upright panel joints that end at the top of the gang,
 * cross members of panels on their side there (a height h comes to panel height - h from the left), the middle of
 * the top member of upright panels there.
 */
export function hookPlaces(
  { panels, extent }: Gang,
  joints: readonly PanelJoint[],
  allowed: readonly HookPlace[] = usualHookPlaces,
): readonly number[] {
  const places = new Set<number>();
  for (const { kind, xNm, yNm, lengthNm } of joints) {
    if (!allowed.includes('panel-joint')) break;
    if (kind === 'vertical' && yNm + lengthNm === extent.topNm) places.add(xNm);
  }
  for (const { panel, onSide, leftNm, rightNm, topNm } of panels) {
    if (topNm !== extent.topNm) continue;
    if (onSide && allowed.includes('cross-member')) {
      for (const memberNm of panel.crossMembersNm ?? []) places.add(leftNm + panel.heightNm - memberNm);
    }
    if (!onSide && allowed.includes('top-member')) places.add(Math.round((leftNm + rightNm) / 2));
  }
  return [...places].sort((one, other) => one - other);
}

interface Pair {
  readonly places: readonly [number, number];
  /** Difference of the two loads over the weight, as a fraction. */
  readonly difference: Ratio;
  /** Twice the distance of the spacing from L/2. */
  readonly offHalf: number;
}

/**
 * Two places by the lever arms about the centre of gravity: no load negative, then least difference of the
 * loads, then spacing nearest half the gang's length, then leftmost. Undefined where every pair lifts one hook.
 */
export function pairOfPlaces(
  places: readonly number[],
  centre: Ratio,
  widthNm: number,
): readonly [number, number] | undefined {
  let best: Pair | undefined;
  for (const [index, left] of places.entries()) {
    if (BigInt(left) * centre.under > centre.over) break;
    for (const right of places.slice(index + 1)) {
      const rightOver = BigInt(right) * centre.under;
      if (rightOver < centre.over) continue;
      const twice = BigInt(left + right) * centre.under - 2n * centre.over;
      const pair: Pair = {
        places: [left, right],
        difference: { over: twice < 0n ? -twice : twice, under: BigInt(right - left) * centre.under },
        offHalf: Math.abs(2 * (right - left) - widthNm),
      };
      if (best === undefined || isBetter(pair, best)) best = pair;
    }
  }
  return best?.places;
}

/** Pairs come from left to right, so an equal one does not replace an earlier one. */
function isBetter(pair: Pair, best: Pair): boolean {
  const one = pair.difference.over * best.difference.under;
  const other = best.difference.over * pair.difference.under;
  return one === other ? pair.offHalf < best.offHalf : one < other;
}

/** After this many steps the search keeps the best it has: thousands of places are no gang. */
const mostSteps = 2_000_000;

/**
 * `count` of the places whose mean is nearest to the centre, by exact sums; of equal ones the leftmost. Searched
 * from the left, leaving out whatever cannot come nearer than the best so far.
 */
export function placesByMean(places: readonly number[], count: number, centre: Ratio): readonly number[] {
  const target = (count * Number(centre.over)) / Number(centre.under);
  const sums = [0];
  for (const place of places) sums.push((sums.at(-1) ?? 0) + place);
  const sumOf = (from: number, to: number): number => (sums[to] ?? 0) - (sums[from] ?? 0);
  let steps = 0;
  let nearest = Number.POSITIVE_INFINITY;
  let best: readonly number[] = [];
  const search = (from: number, chosen: readonly number[], sum: number): void => {
    const open = count - chosen.length;
    if (open === 0) {
      const distance = Math.abs(sum - target);
      if (distance < nearest) [nearest, best] = [distance, chosen];
      return;
    }
    for (let at = from; at + open <= places.length; at++) {
      if (nearest === 0 || ++steps > mostSteps) return;
      const place = places[at] ?? 0;
      // Least and greatest sums that this place can still lead to.
      if (sum + sumOf(at, at + open) - target >= nearest) return;
      const most = sum + place + sumOf(places.length - open + 1, places.length);
      if (target - most >= nearest) continue;
      search(at + 1, [...chosen, place], sum + place);
    }
  };
  search(0, [], 0);
  return best;
}
