// A take-off in the shape in which it is shown: lengths from the gang's lower left corner, seen from the back.
import { z } from 'zod';
import { edgeKinds } from '../catalogue/edges.ts';
import type { DesignGeometry } from '../gang/design.ts';
import type { Finding, Place } from '../gang/findings.ts';
import type { RailStand } from '../gang/rail-clash.ts';
import type { TakeOff } from '../gang/take-off.ts';
import { areaM2 } from '../units/area.ts';
import { asData } from './as-data.ts';
import { code, finding, lengthNm, quantity } from './shapes.ts';

const point = z.strictObject({ xNm: lengthNm, yNm: lengthNm });
const place = z.union([z.string(), point]);
const railStand = point.extend({ direction: z.enum(['level', 'upright']) });
const drawnPiece = z.strictObject({ xNm: lengthNm, yNm: lengthNm, widthNm: lengthNm, heightNm: lengthNm });

export const takeoffLine = z.strictObject({
  component: code,
  name: z.string(),
  kind: z.string(),
  quantity,
  weightGrams: z.int(),
  because: z.array(z.strictObject({ rule: z.string(), count: z.int(), where: place })),
});

export const drawnPanel = drawnPiece.extend({ panel: code, onSide: z.boolean() });

/** To be spread into an answer's shape. */
export const shownTakeOffShape = {
  edges: z.strictObject({ left: z.enum(edgeKinds), right: z.enum(edgeKinds) }),
  panels: z.array(drawnPanel),
  fillers: z.array(drawnPiece),
  joints: z.array(
    z.strictObject({
      kind: z.enum(['vertical', 'horizontal', 'filler']),
      xNm: lengthNm,
      yNm: lengthNm,
      lengthNm,
      locks: z.int(),
    }),
  ),
  rails: z.array(
    z.strictObject({
      component: code,
      direction: z.enum(['level', 'upright']),
      /** Its left or lower end. */
      xNm: lengthNm,
      yNm: lengthNm,
      lengthNm,
      bolts: z.int(),
      /** Fewer than `bolts` where a panel has no room for one; a finding says so. */
      boltPlaces: z.array(point),
      neededFor: z.enum(['picking', 'placing', 'both']),
    }),
  ),
  /** Rails moved between the pick and the pour, taken off (`to` null) or put on (`from` null). */
  railMoves: z.array(
    z.strictObject({
      step: z.enum(['before-the-pour', 'before-the-pick']),
      component: code,
      from: railStand.nullable(),
      to: railStand.nullable(),
    }),
  ),
  hooks: z.array(z.strictObject({ xNm: lengthNm, yNm: lengthNm, loadGrams: z.int() })),
  /** Everywhere that the rule tables let a hook stand. */
  hookPlaces: z.array(point),
  /** Brackets at the top, braces at the foot where their shoes are. */
  brackets: z.array(point),
  braces: z.array(point),
  /** Of the panel that governs; null where the catalogue does not tell it of every panel. */
  permittedPressure: z.strictObject({ pa: z.int(), panel: code, onSide: z.boolean() }).nullable(),
  holes: z.array(point),
  centreOfGravity: point,
  lines: z.array(takeoffLine),
  findings: z.array(finding),
  widthNm: lengthNm,
  heightNm: lengthNm,
  areaM2: z.number(),
  weightGrams: z.int(),
};

type Rail = TakeOff['rails'][number];

export function shownTakeOff(takeOff: TakeOff, edges: DesignGeometry['edges']) {
  const { xNm: left, yNm: bottom } = takeOff.origin;
  const moved = <T extends { readonly xNm: number; readonly yNm: number }>(thing: T): T => ({
    ...thing,
    xNm: thing.xNm - left,
    yNm: thing.yNm - bottom,
  });
  const movedStand = (stand: RailStand | null): RailStand | null => (stand === null ? null : moved(stand));
  const movedPlace = (where: Place): Place => (typeof where === 'string' ? where : moved(where));
  const movedFinding = ({ where, ...rest }: Finding): Finding =>
    where === undefined ? rest : { ...rest, where: movedPlace(where) };
  return asData({
    edges,
    panels: takeOff.panels.map(moved),
    fillers: takeOff.fillers.map(moved),
    joints: takeOff.joints.map(moved),
    rails: takeOff.rails.map((rail) => ({
      ...shownRail(moved(rail)),
      boltPlaces: rail.boltPlaces.map(moved),
    })),
    railMoves: takeOff.railMoves.map((move) => ({
      ...move,
      from: movedStand(move.from),
      to: movedStand(move.to),
    })),
    hooks: takeOff.hooks.map(moved).map(({ xNm, yNm, loadGrams }) => ({ xNm, yNm, loadGrams })),
    hookPlaces: takeOff.hookPlaces.map(moved),
    brackets: takeOff.brackets.map(moved),
    braces: takeOff.braces.map(moved),
    permittedPressure: takeOff.permittedPressure,
    holes: (takeOff.holes ?? []).map(moved),
    centreOfGravity: moved(takeOff.centreOfGravity),
    lines: takeOff.lines.map((line) => ({
      ...line,
      because: line.because.map((reason) => ({ ...reason, where: movedPlace(reason.where) })),
    })),
    findings: takeOff.findings.map(movedFinding),
    widthNm: takeOff.widthNm,
    heightNm: takeOff.heightNm,
    areaM2: areaM2(takeOff.areaNm2),
    weightGrams: takeOff.weightGrams,
  });
}

function shownRail({ component, direction, xNm, yNm, lengthNm: railNm, bolts, neededFor }: Rail) {
  return { component, direction, xNm, yNm, lengthNm: railNm, bolts, neededFor };
}
