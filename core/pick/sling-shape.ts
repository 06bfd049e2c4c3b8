// Where the crane hook hangs over the gang, to draw and to know the headroom. Legs of one length meet over the
// middle between the outer hooks; at a typed angle, which is that of the flattest leg, the hook stands over the
// centre of gravity.
import type { PointNm } from '../gang/findings.ts';
import type { Sling } from './sling.ts';

export interface SlingShape {
  /** Where the legs meet; null where they stand straight up, or lean out, and so never meet. */
  readonly apex: PointNm | null;
  readonly headroomNm: number | null;
  /** Of every hook, in their order; null where the legs do not meet. */
  readonly legsNm: readonly number[] | null;
}

/** @param centreXNm of the gang, along it @param topNm where the hooks stand, from the foot */
export function slingShape(
  sling: Sling,
  positionsNm: readonly number[],
  centreXNm: number,
  topNm: number,
): SlingShape {
  const [left, right] = [Math.min(...positionsNm), Math.max(...positionsNm)];
  const byLegs = sling.headroomNm !== undefined;
  const xNm = byLegs ? Math.round((left + right) / 2) : centreXNm;
  const reachNm = Math.max(xNm - left, right - xNm);
  const aboveNm =
    sling.headroomNm ?? (sling.angleDeg < 90 ? (reachNm * sling.sine) / sling.cosine : undefined);
  if (aboveNm === undefined || reachNm <= 0) return { apex: null, headroomNm: null, legsNm: null };
  const headroomNm = Math.round(aboveNm);
  return {
    apex: { xNm, yNm: topNm + headroomNm },
    headroomNm,
    legsNm: positionsNm.map((at) => Math.round(Math.hypot(at - xNm, headroomNm))),
  };
}
