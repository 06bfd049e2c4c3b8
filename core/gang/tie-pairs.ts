// Tie holes that face each other within a tolerance, each with one partner at most: as many pairs as there can be.
// Taking the nearest first could leave a hole alone that a better choice would pair.
import type { PointNm } from './findings.ts';

export interface TiePairs {
  readonly pairs: readonly (readonly [PointNm, PointNm])[];
  /** Holes of the first and of the second side without a partner, in the order given. */
  readonly alone: readonly [readonly PointNm[], readonly PointNm[]];
}

/**
 * A greatest matching in the graph of holes no farther apart than the tolerance, in a straight line. It is grown by
 * augmenting paths (Berge 1957: a matching without one is greatest), from pairs that are exactly opposite. Distances
 * are compared as squares of whole nanometres, exactly.
 */
export function pairHoles(
  first: readonly PointNm[],
  second: readonly PointNm[],
  toleranceNm: number,
): TiePairs {
  const near = neighbours(first, second, toleranceNm);
  const partnerOfSecond = new Map<number, number>();
  const paired = new Set<number>();
  for (const [index, hole] of first.entries()) {
    const exact = (near[index] ?? []).find(
      (at) => !partnerOfSecond.has(at) && second[at]?.xNm === hole.xNm && second[at]?.yNm === hole.yNm,
    );
    if (exact === undefined) continue;
    partnerOfSecond.set(exact, index);
    paired.add(index);
  }
  for (const index of first.keys()) {
    if (!paired.has(index)) augment(index, near, partnerOfSecond);
  }
  const pairs = [...partnerOfSecond]
    .sort(([, one], [, other]) => one - other)
    .flatMap(([at, index]): readonly (readonly [PointNm, PointNm])[] => {
      const [one, other] = [first[index], second[at]];
      return one === undefined || other === undefined ? [] : [[one, other]];
    });
  const withPartner = new Set(partnerOfSecond.values());
  return {
    pairs,
    alone: [
      first.filter((_, index) => !withPartner.has(index)),
      second.filter((_, at) => !partnerOfSecond.has(at)),
    ],
  };
}

/** Of every first hole the second ones within the tolerance, nearest first. */
function neighbours(
  first: readonly PointNm[],
  second: readonly PointNm[],
  toleranceNm: number,
): readonly (readonly number[])[] {
  const byX = [...second.keys()].sort((one, other) => (second[one]?.xNm ?? 0) - (second[other]?.xNm ?? 0));
  const most = BigInt(toleranceNm) ** 2n;
  return first.map((hole) => {
    const found: { readonly at: number; readonly square: bigint }[] = [];
    for (let index = firstFrom(byX, second, hole.xNm - toleranceNm); index < byX.length; index++) {
      const at = byX[index] ?? 0;
      const other = second[at];
      if (other === undefined || other.xNm > hole.xNm + toleranceNm) break;
      if (Math.abs(other.yNm - hole.yNm) > toleranceNm) continue;
      const square = BigInt(other.xNm - hole.xNm) ** 2n + BigInt(other.yNm - hole.yNm) ** 2n;
      if (square <= most) found.push({ at, square });
    }
    return found.sort((one, other) => Number(one.square - other.square)).map(({ at }) => at);
  });
}

function firstFrom(byX: readonly number[], holes: readonly PointNm[], xNm: number): number {
  let [low, high] = [0, byX.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((holes[byX[middle] ?? 0]?.xNm ?? 0) < xNm) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Walks from a hole alone over pairs to a partner that is free, breadth first, and changes the pairs on the way;
 * where there is no such way now, none comes later.
 */
function augment(from: number, near: readonly (readonly number[])[], partners: Map<number, number>): void {
  const cameFrom = new Map<number, number>();
  const open = [from];
  for (const index of open) {
    for (const at of near[index] ?? []) {
      if (cameFrom.has(at)) continue;
      cameFrom.set(at, index);
      const held = partners.get(at);
      if (held !== undefined) {
        open.push(held);
        continue;
      }
      turnPairs(at, from, cameFrom, partners);
      return;
    }
  }
}

function turnPairs(
  free: number,
  from: number,
  cameFrom: ReadonlyMap<number, number>,
  partners: Map<number, number>,
): void {
  const before = new Map([...partners].map(([at, index]) => [index, at]));
  for (let at: number | undefined = free; at !== undefined;) {
    const index = cameFrom.get(at);
    if (index === undefined) return;
    partners.set(at, index);
    at = index === from ? undefined : before.get(index);
  }
}
