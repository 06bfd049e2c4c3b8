// Loose pieces of a wall: what belongs to none of its gangs and is needed at the pour all the same.
import type { Component } from '../catalogue/component.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { shown } from '../gang/findings.ts';
import { madeUp } from '../gang/made-up.ts';
import { type MeetingGang, meetingJoints } from '../gang/meeting-joints.ts';
import { type TakeOff, takeOff } from '../gang/take-off.ts';
import { areaM2 } from '../units/area.ts';
import { heightOf, type CornerPieces, type CornerStack } from './wall-corners.ts';
import type { FaceGang, StandingUnit } from './wall-gangs.ts';
import { innerSide, type Leg } from './wall-legs.ts';
import { piecesOfHeight } from './wall-rows.ts';
import type { LooseItem, SideName, Wall } from './wall.ts';

/** Corner pieces, each kind of piece of a corner on a line. */
export function cornerItems(wall: Wall, corners: readonly CornerPieces[]): readonly LooseItem[] {
  return corners.flatMap(({ inside, outside }, turn) => {
    const inner = innerSide(wall, turn);
    const where = `corner ${turn + 1}`;
    return [
      ...pieceLines(inside.pieces, inner, 'inside-corner', where),
      ...pieceLines(outside.pieces, inner === 'A' ? 'B' : 'A', 'outside-corner', where),
    ];
  });
}

/** Each kind of piece on a line. */
export function pieceLines(
  pieces: readonly Component[],
  side: LooseItem['side'],
  purpose: LooseItem['purpose'],
  where: string,
): readonly LooseItem[] {
  const counts = new Map<string, number>();
  for (const { code } of pieces) counts.set(code, (counts.get(code) ?? 0) + 1);
  return [...counts].map(([component, quantity]) => ({ side, purpose, component, quantity, where }));
}

/** Stop-ends where the form is open at an end: the catalogue's where they fit, else made on the site. */
export function stopEndItems(
  system: PanelSystem,
  wall: Wall,
  legs: readonly Leg[],
  formNm: number,
): readonly LooseItem[] {
  const fitting = system.components.filter(
    ({ kind, widthNm }) => kind === 'stop-end' && widthNm === wall.thicknessNm,
  );
  const pieces = piecesOfHeight(fitting.map(heightOf), formNm)?.flatMap((index) => fitting[index] ?? []);
  return legs.flatMap((leg) =>
    leg.stopEnds.flatMap((end) => {
      const where = end === 'from' ? 'start of the wall' : 'end of the wall';
      return pieces === undefined
        ? [madeItem('stop-end', 'both', where, wall.thicknessNm, formNm, system.rules.stopEnds)]
        : pieceLines(pieces, 'both', 'stop-end', where);
    }),
  );
}

/** Closures of a face: wider than any lock spans, so made on the site. */
export function closureItems(
  system: PanelSystem,
  side: SideName,
  leg: Leg,
  units: readonly StandingUnit[],
  formNm: number,
): readonly LooseItem[] {
  return units
    .filter(({ unit }) => unit.kind === 'closure')
    .map(({ fromNm, widthNm }) => {
      const where = `side ${side}, leg ${leg.index + 1}, ${shown(fromNm)} along`;
      return madeItem('closure', side, where, widthNm, formNm, system.rules.closures);
    });
}

function madeItem(
  purpose: 'stop-end' | 'closure',
  side: LooseItem['side'],
  where: string,
  widthNm: number,
  heightNm: number,
  table: PanelSystem['rules']['closures'],
): LooseItem {
  const made = madeUp(widthNm, heightNm, table);
  return {
    side,
    purpose,
    component: null,
    quantity: 1,
    where,
    made: {
      widthNm,
      heightNm,
      areaM2: areaM2(made.areaNm2),
      backing: made.backing?.component ?? null,
      backingPieces: made.backing?.count ?? 0,
      hours: made.hours,
    },
  };
}

/** Locks where gangs meet beside each other or meet a corner piece, by component; they belong to the pour, once. */
export function meetingItems(
  system: PanelSystem,
  leg: Leg,
  side: SideName,
  gangs: readonly FaceGang[],
  corners: Readonly<Record<'from' | 'to', CornerStack | undefined>>,
): readonly LooseItem[] {
  const standing = gangs
    .map((gang) => ({ gang, taken: takenOff(system, gang) }))
    .sort((one, other) => one.gang.fromNm - other.gang.fromNm);
  const items: LooseItem[] = [];
  const meet = (one: MeetingGang, other: MeetingGang, atNm: number): void => {
    const [left, right] = side === 'A' ? [one, other] : [other, one];
    const counts = new Map<string, number>();
    for (const { component, count } of meetingJoints(left, right, 0, system.rules).taken)
      counts.set(component, (counts.get(component) ?? 0) + count);
    const where = `side ${side}, leg ${leg.index + 1}, ${shown(atNm)} along`;
    for (const [component, quantity] of counts)
      if (quantity > 0) items.push({ side, purpose: 'gang-locks', component, quantity, where });
  };
  for (const { gang, taken } of standing) {
    const endNm = gang.fromNm + gang.widthNm;
    const { bottomNm } = gang;
    for (const next of standing)
      if (next.gang.fromNm === endNm && next.gang.bottomNm === bottomNm) meet(taken, next.taken, endNm);
    const [from, to] = [leg.from[side], leg.to[side]];
    if (corners.from !== undefined && gang.fromNm === from.atNm + from.cornerLegNm)
      meet(asGang(corners.from, bottomNm), taken, gang.fromNm);
    if (corners.to !== undefined && endNm === to.atNm - to.cornerLegNm)
      meet(taken, asGang(corners.to, bottomNm), endNm);
  }
  return items;
}

function takenOff(system: PanelSystem, gang: FaceGang): TakeOff {
  const taken = takeOff(system, gang.geometry);
  if (!taken.ok) throw new Error(taken.error.message);
  return taken.value;
}

/** The pieces of a corner over each other, seen along one of its legs from the foot of the gang that meets them. */
function asGang({ pieces }: CornerStack, footNm: number): MeetingGang {
  let bottomNm = -footNm;
  const panels = pieces.map((piece) => {
    const yNm = bottomNm;
    bottomNm += heightOf(piece);
    return { panel: piece.code, onSide: false, xNm: 0, yNm, widthNm: 1, heightNm: heightOf(piece) };
  });
  return { panels, fillers: [], origin: { xNm: 0, yNm: 0 }, widthNm: 1, heightNm: bottomNm };
}

export function tieItem({ components }: PanelSystem, quantity: number, where: string): LooseItem {
  const ties = components.filter(({ kind }) => kind === 'tie');
  // which of several fits is not in the catalogue
  const component = ties.length === 1 ? (ties[0]?.code ?? null) : null;
  return { side: 'both', purpose: 'ties', component, quantity, where };
}
