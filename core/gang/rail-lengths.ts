// Which of the lengths of the catalogue serve: the shortest allowed rail over each joint, or the fewest pieces that cover a
// whole dimension.
import type { Component, ComponentKind } from '../catalogue/component.ts';

/** A rail, or a plank or guardrail, whose length is known. */
export interface Rail {
  readonly code: string;
  readonly lengthNm: number;
}

/** Pieces of a kind not under the minimum, in catalogue order; of equal lengths only the first. */
export function allowedLengths(
  components: readonly Component[],
  wanted: ComponentKind,
  minimumNm: number,
): readonly Rail[] {
  const rails = new Map<number, Rail>();
  for (const { kind, code, lengthNm } of components) {
    if (kind !== wanted || lengthNm === undefined || lengthNm < minimumNm) continue;
    if (!rails.has(lengthNm)) rails.set(lengthNm, { code, lengthNm });
  }
  return [...rails.values()];
}

/** More rails than this in one line is a length typed wrongly. */
const mostRails = 200;

/** So many sets of rails are kept while the best is looked for: more would make a person wait. */
const mostSets = 100_000;

/**
 * The fewest rails that cover the span, then the least total length, then the longest single rail (and the next
 * longest where those are equal); longest first. Best sets are kept by total length and grown by a rail no longer
 * than their last: the best set of a total without its last rail is the best of its own total.
 */
export function fewestRails(
  rails: readonly Rail[],
  spanNm: number,
): readonly Rail[] | 'too-many-rails' | 'too-many-sets' {
  const falling = rails.toSorted((one, other) => other.lengthNm - one.lengthNm);
  const longestNm = falling[0]?.lengthNm ?? 0;
  if (longestNm === 0) return 'too-many-rails';
  const count = Math.floor(spanNm / longestNm) + (spanNm % longestNm === 0 ? 0 : 1);
  if (count > mostRails) return 'too-many-rails';
  let sets = new Map<number, readonly Rail[]>([[0, []]]);
  let kept = 0;
  for (let placed = 1; placed <= count; placed++) {
    sets = grow(sets, falling, spanNm, count - placed);
    kept += sets.size;
    if (kept > mostSets) return 'too-many-sets';
  }
  return sets.get(Math.min(...sets.keys())) ?? 'too-many-rails';
}

/** One rail more in every set, where it and as many as `left` like it still cover the span. */
function grow(
  sets: ReadonlyMap<number, readonly Rail[]>,
  falling: readonly Rail[],
  spanNm: number,
  left: number,
): Map<number, readonly Rail[]> {
  const grown = new Map<number, readonly Rail[]>();
  for (const [total, set] of sets) {
    const lastNm = set.at(-1)?.lengthNm ?? Infinity;
    for (const rail of falling) {
      if (rail.lengthNm > lastNm) continue;
      const sum = total + rail.lengthNm;
      if (sum + left * rail.lengthNm < spanNm) break;
      if (grown.size > mostSets) return grown;
      const candidate = [...set, rail];
      const known = grown.get(sum);
      if (known === undefined || hasLonger(candidate, known)) grown.set(sum, candidate);
    }
  }
  return grown;
}

/** Does the first set, both longest first, have the longer rail where they first differ? */
function hasLonger(one: readonly Rail[], other: readonly Rail[]): boolean {
  for (const [index, rail] of one.entries()) {
    const difference = rail.lengthNm - (other[index]?.lengthNm ?? 0);
    if (difference !== 0) return difference > 0;
  }
  return false;
}
