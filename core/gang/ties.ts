// Holes for ties: where the gang has them. Ties themselves are counted at the pour, once per pair of holes.
import type { PointNm } from './findings.ts';
import type { Gang } from './placed.ts';

/** Every place once, by x, then y. On its side, a panel's point (x, y) comes to (height - y, x). */
export function tieHoles({ panels }: Gang): readonly PointNm[] {
  const places = new Map<string, PointNm>();
  for (const { panel, onSide, leftNm, bottomNm } of panels) {
    for (const [x, y] of panel.tieHolesNm ?? []) {
      const xNm = leftNm + (onSide ? panel.heightNm - y : x);
      const yNm = bottomNm + (onSide ? x : y);
      places.set(`${xNm} ${yNm}`, { xNm, yNm });
    }
  }
  return [...places.values()].sort((one, other) => one.xNm - other.xNm || one.yNm - other.yNm);
}
