// Holes for ties: where the gang has them. Ties themselves are counted at the pour, once per pair of holes.
import type { PointNm } from './findings.ts';
import type { Gang, StandingPanel } from './placed.ts';

/** Every place once, by x, then y. */
export function tieHoles({ panels }: Gang): readonly PointNm[] {
  const places = new Map<string, PointNm>();
  for (const hole of panels.flatMap(holesOf)) places.set(`${hole.xNm} ${hole.yNm}`, hole);
  return [...places.values()].sort((one, other) => one.xNm - other.xNm || one.yNm - other.yNm);
}

/** Of one panel as it stands. On its side, its point (x, y) comes to (height - y, x). */
export function holesOf({ panel, onSide, leftNm, bottomNm }: StandingPanel): readonly PointNm[] {
  return (panel.tieHolesNm ?? []).map(([x, y]) => ({
    xNm: leftNm + (onSide ? panel.heightNm - y : x),
    yNm: bottomNm + (onSide ? x : y),
  }));
}
