// Which corner pieces stand at each corner of a wall, how far their legs reach along the faces, and whether a closed
// box can be drawn in to come off its concrete.
import type { Component, ComponentKind } from '../catalogue/component.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { type Finding, shown } from '../gang/findings.ts';
import { innerSide } from './wall-legs.ts';
import { piecesOfHeight } from './wall-rows.ts';
import type { SideName, Wall } from './wall.ts';

/** The pieces over each other at one side of a corner. */
export interface CornerStack {
  /** Of the corner: along the face of the leg before it and of the leg after it. */
  readonly legBeforeNm: number;
  readonly legAfterNm: number;
  /** From the bottom; empty where no piece of the catalogue was found. */
  readonly pieces: readonly Component[];
  /** Tie holes, from the corner along either leg, and above the foot of the form. */
  readonly holes: readonly (readonly [fromCornerNm: number, heightNm: number])[];
}

export interface CornerPieces {
  readonly inside: CornerStack;
  readonly outside: CornerStack;
}

export interface Corners {
  /** By turn. */
  readonly corners: readonly CornerPieces[];
  readonly findings: readonly Finding[];
}

export function wallCorners(system: PanelSystem, wall: Wall, formNm: number): Corners {
  const findings: Finding[] = [];
  const boxInside = insideOfBox(wall);
  const corners = wall.turns.map((_, turn): CornerPieces => {
    const where = `corner ${turn + 1}`;
    const mustShrink = boxInside !== undefined && innerSide(wall, turn) === boxInside;
    const inside = stackOf(system, 'inside-corner', wall.insideCornerLegNm, formNm, mustShrink);
    const outside = stackOf(system, 'outside-corner', wall.outsideCornerLegNm, formNm, false);
    if (inside.pieces.length === 0) findings.push(noPieces('inside', formNm, where));
    if (outside.pieces.length === 0) findings.push(noPieces('outside', formNm, where));
    return { inside, outside };
  });
  const strips: readonly ComponentKind[] = ['filler', 'closure'];
  const canShrink =
    corners.some(({ inside }, turn) => innerSide(wall, turn) === boxInside && shrinks(inside)) ||
    system.components.some((item) => strips.includes(item.kind) && item.canShrink === true);
  if (boxInside !== undefined && !canShrink)
    findings.push({
      rule: 'corners.no-way-to-shrink',
      severity: 'stop',
      message: `Side ${boxInside} is the inside of a closed box, and no inside corner and no strip of the system can be drawn in: the form would not come off the concrete.`,
      where: `side ${boxInside}`,
    });
  return { corners, findings };
}

function shrinks({ pieces }: CornerStack): boolean {
  return pieces.length > 0 && pieces.every((piece) => piece.canShrink === true);
}

/** Which side lies inside a closed wall. */
function insideOfBox(wall: Wall): SideName | undefined {
  if (!wall.closed) return undefined;
  const lefts = wall.turns.filter((turn) => turn === 'left').length;
  return lefts * 2 > wall.turns.length ? 'B' : 'A';
}

export function stackOf(
  system: PanelSystem,
  kind: 'inside-corner' | 'outside-corner',
  enteredLegNm: number | undefined,
  formNm: number,
  preferShrinking: boolean,
): CornerStack {
  const groups = new Map<string, Component[]>();
  for (const item of system.components) {
    if (item.kind !== kind) continue;
    const [before, after] = legsOf(item, enteredLegNm);
    // an inside corner of unknown legs cannot be placed
    if (before === undefined || after === undefined) {
      if (kind === 'inside-corner' && enteredLegNm === undefined) continue;
    } else if (enteredLegNm !== undefined && (before !== enteredLegNm || after !== enteredLegNm)) continue;
    const key = `${before ?? 0} ${after ?? 0} ${item.canShrink === true}`;
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  const all = [...groups.values()];
  const ordered = preferShrinking
    ? [...all.filter(([item]) => item?.canShrink), ...all.filter(([item]) => !item?.canShrink)]
    : all;
  for (const group of ordered) {
    const pieces = piecesOfHeight(group.map(heightOf), formNm)?.flatMap((index) => group[index] ?? []);
    const [first] = group;
    if (pieces === undefined || first === undefined) continue;
    const [before = 0, after = 0] = legsOf(first, enteredLegNm);
    return { legBeforeNm: before, legAfterNm: after, pieces, holes: holesOf(pieces) };
  }
  return { legBeforeNm: enteredLegNm ?? 0, legAfterNm: enteredLegNm ?? 0, pieces: [], holes: [] };
}

/** A piece with one length only is known by its height: the length is that, and the legs have to be entered. */
function legsOf(item: Component, enteredNm: number | undefined): readonly [number?, number?] {
  if (item.widthNm === undefined) return enteredNm === undefined ? [] : [enteredNm, enteredNm];
  return [item.widthNm, item.heightNm === undefined ? item.widthNm : (item.lengthNm ?? item.widthNm)];
}

export function heightOf(item: Component): number {
  return item.heightNm ?? item.lengthNm ?? 0;
}

function holesOf(pieces: readonly Component[]): readonly (readonly [number, number])[] {
  let bottomNm = 0;
  return pieces.flatMap((piece) => {
    const at = bottomNm;
    bottomNm += heightOf(piece);
    return (piece.tieHolesNm ?? []).map(([x, y]): [number, number] => [x, at + y]);
  });
}

export function noPieces(which: 'inside' | 'outside', formNm: number, where: string): Finding {
  return {
    rule: 'corners.pieces',
    severity: 'caution',
    message: `No ${which} corner pieces of the catalogue add up to ${shown(formNm)}: they are not among the loose pieces.`,
    where,
  };
}
