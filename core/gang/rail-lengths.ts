// Which of the catalogue's rails serve: the shortest allowed one over each joint, or the fewest that cover a
// whole dimension.
import type { Component } from '../catalogue/component.ts';

/** A rail whose length is known. */
export interface Rail {
  readonly code: string;
  readonly lengthNm: number;
}

/** The catalogue's rails not under the minimum, in catalogue order; of equal lengths only the first. */
export function allowedRails(components: readonly Component[], minimumNm: number): readonly Rail[] {
  const rails = new Map<number, Rail>();
  for (const { kind, code, lengthNm } of components) {
    if (kind !== 'stiffening-rail' || lengthNm === undefined || lengthNm < minimumNm) continue;
    if (!rails.has(lengthNm)) rails.set(lengthNm, { code, lengthNm });
  }
  return [...rails.values()];
}

export function shortestRail(rails: readonly Rail[]): Rail | undefined {
  return rails.toSorted((one, other) => one.lengthNm - other.lengthNm)[0];
}

/** More rails than this in one line is a length typed wrongly. */
const mostRails = 200;

/**
 * The fewest rails that cover the span, then the least total length, then the longest single rail; longest
 * first. Undefined where there are none, or would be more than 200. Best sets are kept by total length: putting
 * the same rail into two sets of one total leaves their order as it was, so the best set of a total grows only
 * out of best sets.
 */
export function fewestRails(rails: readonly Rail[], spanNm: number): readonly Rail[] | undefined {
  const longest = Math.max(0, ...rails.map((rail) => rail.lengthNm));
  if (longest === 0) return undefined;
  const count = Math.floor(spanNm / longest) + (spanNm % longest === 0 ? 0 : 1);
  if (count > mostRails) return undefined;
  let sets = new Map<number, readonly Rail[]>([[0, []]]);
  for (let placed = 1; placed <= count; placed++) {
    const grown = new Map<number, readonly Rail[]>();
    for (const [total, set] of sets) {
      for (const rail of rails) {
        const sum = total + rail.lengthNm;
        if (sum + (count - placed) * longest < spanNm) continue;
        const candidate = [...set, rail].sort((one, other) => other.lengthNm - one.lengthNm);
        const known = grown.get(sum);
        if (known === undefined || hasLonger(candidate, known)) grown.set(sum, candidate);
      }
    }
    sets = grown;
  }
  const least = Math.min(...sets.keys());
  return sets.get(least);
}

/** Does the first set, both longest first, have the longer rail where they first differ? */
function hasLonger(one: readonly Rail[], other: readonly Rail[]): boolean {
  for (const [index, rail] of one.entries()) {
    const difference = rail.lengthNm - (other[index]?.lengthNm ?? 0);
    if (difference !== 0) return difference > 0;
  }
  return false;
}
