// Tie holes of a wall in their places, taken from the gangs as they are drawn and the corner pieces as they stand, and
// paired: each without a partner opposite is a stop at its place.
import type { PanelSystem } from '../catalogue/system.ts';
import { type Finding, type PointNm, shown } from '../gang/findings.ts';
import { placeDesign } from '../gang/placed.ts';
import { pairHoles } from '../gang/tie-pairs.ts';
import { tieHoles } from '../gang/ties.ts';
import type { FaceGang } from './wall-gangs.ts';
import type { FaceEnd, Leg } from './wall-legs.ts';
import type { AloneHole, SideName } from './wall.ts';

export interface LegTies {
  readonly pairs: number;
  readonly alone: readonly AloneHole[];
  readonly findings: readonly Finding[];
}

export function legTies(
  system: PanelSystem,
  leg: Leg,
  gangs: Readonly<Record<SideName, readonly FaceGang[]>>,
  toleranceNm: number,
): LegTies {
  const [a, b] = [holesOf(system, leg, 'A', gangs.A), holesOf(system, leg, 'B', gangs.B)];
  const { pairs, alone } = pairHoles(a, b, toleranceNm);
  const [ofA, ofB] = alone;
  const without = [
    ...ofA.map((hole) => aloneHole(leg, 'A', hole)),
    ...ofB.map((hole) => aloneHole(leg, 'B', hole)),
  ];
  return { pairs: pairs.length, alone: without, findings: without.map(aloneFinding) };
}

/** Beyond the face of the other side, at the outside of a corner or past the pour's end, no form stands opposite. */
function aloneHole(leg: Leg, side: SideName, { xNm, yNm }: PointNm): AloneHole {
  const other = side === 'A' ? 'B' : 'A';
  const facesForm = xNm >= leg.from[other].atNm && xNm <= leg.to[other].atNm;
  return { side, leg: leg.index, alongNm: xNm, heightNm: yNm, facesForm };
}

function aloneFinding({ side, leg, alongNm, heightNm, facesForm }: AloneHole): Finding {
  const where = `side ${side}, leg ${leg + 1}, ${shown(alongNm)} along, ${shown(heightNm)} up`;
  if (!facesForm) {
    const message = `The tie hole of side ${side} faces no form: it is plugged, and what it held is held otherwise.`;
    return { rule: 'ties-face-no-form', severity: 'caution', message, where };
  }
  const message = `The tie hole of side ${side} has no hole opposite.`;
  return { rule: 'ties-through', severity: 'stop', message, where };
}

/** Along the leg and above the foot of the form, each place once. */
function holesOf(
  system: PanelSystem,
  leg: Leg,
  side: SideName,
  gangs: readonly FaceGang[],
): readonly PointNm[] {
  const places = new Map<string, PointNm>();
  const add = (xNm: number, yNm: number): void => void places.set(`${xNm} ${yNm}`, { xNm, yNm });
  for (const { geometry, fromNm, widthNm, bottomNm } of gangs) {
    const placed = placeDesign(system, geometry);
    if (!placed.ok) throw new Error(placed.error.message);
    for (const { xNm, yNm } of tieHoles(placed.value))
      add(fromNm + (side === 'A' ? xNm : widthNm - xNm), bottomNm + yNm);
  }
  addCorner(leg.from[side], 1, add);
  addCorner(leg.to[side], -1, add);
  return [...places.values()].sort((one, other) => one.xNm - other.xNm || one.yNm - other.yNm);
}

function addCorner(end: FaceEnd, inward: 1 | -1, add: (xNm: number, yNm: number) => void): void {
  for (const { fromPanelsNm, heightNm } of end.cornerHoles)
    add(end.atNm + inward * (end.cornerLegNm - fromPanelsNm), heightNm);
}
