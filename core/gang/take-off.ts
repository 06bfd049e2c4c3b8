// The take-off of a design: what it is made of, each line with its reasons, what the rules find, and everything
// that its elevation is drawn from. One pass over the rules in a fixed order; every rule has a file of its own.
import { type Answer, answer } from '../answer.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { rectangleNm2 } from '../units/area.ts';
import { type Ratio, roundHalfAway } from '../units/exact.ts';
import { absentTables, weightless } from './absent-tables.ts';
import type { DesignGeometry } from './design.ts';
import { takeFillerLocks } from './filler-locks.ts';
import type { Finding, PointNm, Taken } from './findings.ts';
import { findGaps } from './gaps.ts';
import { type PlacedHook, takeHooks } from './hooks.ts';
import { fillerJoints, panelJoints } from './joints.ts';
import { takeLocks } from './locks.ts';
import { findOffGrid } from './off-grid.ts';
import { findOnSide } from './on-side.ts';
import { findOutsideFace, findOverlaps } from './overlaps.ts';
import { permittedPressure, type PermittedPressure } from './permitted-pressure.ts';
import { type Gang, placeDesign, type Rectangle, type StandingPanel } from './placed.ts';
import type { RailMove } from './rail-clash.ts';
import { takeRails } from './rails.ts';
import type { PlacedRail } from './rails-of-table.ts';
import { takeBraces, takeBrackets } from './spaced.ts';
import { tieHoles } from './ties.ts';
import { centreOfGravity, takeOffLines, type TakeOffLine, totalGrams } from './weights.ts';

/** A joint on the elevation with its locks; (x, y) is its left or lower end. */
export interface LockedJoint extends PointNm {
  readonly kind: 'vertical' | 'horizontal' | 'filler';
  readonly lengthNm: number;
  readonly locks: number;
}

/** A piece on the elevation; (x, y) is its lower left corner, width and height as it stands. */
export interface DrawnPiece extends PointNm {
  readonly widthNm: number;
  readonly heightNm: number;
}

export interface DrawnPanel extends DrawnPiece {
  readonly panel: string;
  readonly onSide: boolean;
}

export interface TakeOff {
  readonly lines: readonly TakeOffLine[];
  readonly findings: readonly Finding[];
  readonly panels: readonly DrawnPanel[];
  readonly fillers: readonly DrawnPiece[];
  readonly joints: readonly LockedJoint[];
  readonly rails: readonly PlacedRail[];
  /** Rails that are moved between the pick and the pour; empty where all stay on. */
  readonly railMoves: readonly RailMove[];
  readonly hooks: readonly PlacedHook[];
  /** Everywhere that the rule tables let a hook stand, from left to right. */
  readonly hookPlaces: readonly PointNm[];
  /** Brackets at the top edge, shoes of braces at the foot, evenly spaced. */
  readonly brackets: readonly PointNm[];
  readonly braces: readonly PointNm[];
  /** Null where the catalogue does not tell it of every panel as it stands. */
  readonly permittedPressure: PermittedPressure | null;
  /** Present where the rule tables ask for the holes of ties. */
  readonly holes?: readonly PointNm[];
  /** Least left and bottom edge: the lower left corner of the gang. */
  readonly origin: PointNm;
  /** L and H of the gang, fillers included. */
  readonly widthNm: number;
  readonly heightNm: number;
  /** Of panels and fillers. */
  readonly areaNm2: bigint;
  /** Of all lines but the hooks. */
  readonly weightGrams: number;
  /** Of the panels by weight, to the nearest nanometre. */
  readonly centreOfGravity: PointNm;
}

/**
 * The take-off of a design by the system's rule tables. Refuses what placeDesign refuses (an unknown panel, a
 * filler without size, no panels); everything else is a finding. The system is one that panelSystem() checked.
 */
export function takeOff(system: PanelSystem, design: DesignGeometry): Answer<TakeOff> {
  const placed = placeDesign(system, design);
  if (!placed.ok) return placed;
  const gang = placed.value;
  const { rules, components } = system;
  const joints = panelJoints(gang);
  const overFillers = fillerJoints(gang);
  const locks = takeLocks(gang, joints, rules);
  const fillerLocks = takeFillerLocks(gang, overFillers, rules);
  const rails = takeRails(gang, joints, components, rules);
  const brackets = takeBrackets(gang, components, rules);
  const braces = takeBraces(gang, rules);
  const results = [locks, fillerLocks, rails, brackets, braces];
  const withoutHooks = [...gang.panels.map(panelTaken), ...results.flatMap((result) => result.taken)];
  const weightGrams = totalGrams(takeOffLines(system, withoutHooks));
  const centre = centreOfGravity(gang);
  const hooks = takeHooks(gang, joints, weightGrams, centre.x, rules);
  const lines = takeOffLines(system, [...withoutHooks, ...hooks.taken]);
  const pressure = permittedPressure(gang);
  return answer({
    lines,
    findings: [
      ...findOverlaps(gang),
      ...findGaps(gang, rules),
      ...findOutsideFace(gang, design.face),
      ...findOnSide(gang, rules),
      ...findOffGrid(gang, joints, rules),
      ...[...results, hooks].flatMap((result) => result.findings),
      ...weightless(gang, lines),
      ...pressure.findings,
      ...absentTables(rules),
    ],
    panels: gang.panels.map((panel) => ({ panel: panel.panel.code, onSide: panel.onSide, ...drawn(panel) })),
    fillers: gang.fillers.map(drawn),
    joints: [
      ...joints.map((joint, index) => lockedJoint(joint, locks.locks[index])),
      ...overFillers.map((joint, index) => lockedJoint(joint, fillerLocks.locks[index])),
    ],
    rails: rails.rails,
    railMoves: rails.moves,
    hooks: hooks.hooks,
    hookPlaces: hooks.places,
    brackets: brackets.places,
    braces: braces.places,
    permittedPressure: pressure.permitted,
    ...(rules.ties?.holes === true && { holes: tieHoles(gang) }),
    origin: { xNm: gang.extent.leftNm, yNm: gang.extent.bottomNm },
    widthNm: gang.widthNm,
    heightNm: gang.heightNm,
    areaNm2: areaNm2(gang),
    weightGrams,
    centreOfGravity: { xNm: nearest(centre.x), yNm: nearest(centre.y) },
  });
}

function panelTaken({ panel, leftNm, bottomNm, onSide }: StandingPanel): Taken {
  const rule = onSide ? 'panel on its side' : 'panel upright';
  return { component: panel.code, rule, count: 1, where: { xNm: leftNm, yNm: bottomNm } };
}

function drawn({ leftNm, bottomNm, rightNm, topNm }: Rectangle): DrawnPiece {
  return { xNm: leftNm, yNm: bottomNm, widthNm: rightNm - leftNm, heightNm: topNm - bottomNm };
}

function lockedJoint(joint: Omit<LockedJoint, 'locks'>, locks = 0): LockedJoint {
  const { kind, xNm, yNm, lengthNm } = joint;
  return { kind, xNm, yNm, lengthNm, locks };
}

function areaNm2({ panels, fillers }: Gang): bigint {
  return [...panels, ...fillers].reduce(
    (sum, piece) => sum + rectangleNm2(piece.rightNm - piece.leftNm, piece.topNm - piece.bottomNm),
    0n,
  );
}

function nearest({ over, under }: Ratio): number {
  return Number(roundHalfAway(over, under));
}
