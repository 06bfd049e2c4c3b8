// The pieces of a gang as they are drawn on paper: black on white, told apart by shape, line and letter, so that
// a copy of a copy can still be read. Hardware is drawn as signs of one size, to be countable at any scale.
import type { PointNm } from '../gang/findings.ts';
import type { DrawnPanel, DrawnPiece, LockedJoint } from '../gang/take-off.ts';
import { type BoxMm, boxOf, type Place } from './drawing-place.ts';
import { labelIn, text, wordsMm } from './drawing-labels.ts';
import type { DrawnHook, DrawnRail } from './drawn-gang.ts';
import { fillerOfJoint, locksAlong } from './joint-marks.ts';
import { el, of, type SheetNode } from './node.ts';
import { mm } from './paper.ts';

export const codeMm = 3;

export function rect(className: string, { x, y, width, height }: BoxMm): SheetNode {
  return el('rect', { class: className, x: mm(x), y: mm(y), width: mm(width), height: mm(height) });
}

export function panelPiece(place: Place, panel: DrawnPanel): SheetNode {
  return rect('panel', boxOf(place, panel));
}

/** The code of a panel, "on its side" said with it, where it hides least. */
export function panelWords(place: Place, panel: DrawnPanel, inTheWay: readonly BoxMm[]): SheetNode {
  const words = panel.onSide ? `${panel.panel} on side` : panel.panel;
  const { x, y, turned } = labelIn(boxOf(place, panel), words, codeMm, inTheWay);
  return text(x, y, 'code', words, turned);
}

/** Crossed by slanting lines; drawn line by line, since a pattern is lost in some copies. */
export function fillerPiece(place: Place, filler: DrawnPiece): SheetNode {
  const box = boxOf(place, filler);
  const lines: string[] = [];
  for (let at = 2.5; at < box.width + box.height; at += 2.5) {
    const from = { x: box.x + Math.min(at, box.width), y: box.y + Math.max(0, at - box.width) };
    const to = { x: box.x + Math.max(0, at - box.height), y: box.y + Math.min(at, box.height) };
    lines.push(`M${mm(from.x)} ${mm(from.y)}L${mm(to.x)} ${mm(to.y)}`);
  }
  return of(
    'g',
    'filler',
    rect('filler-edge', box),
    el('path', { class: 'filler-lines', d: lines.join('') }),
  );
}

/** Its locks, spread evenly, and how many they are in figures. */
export function jointPiece(place: Place, joint: LockedJoint, fillers: readonly DrawnPiece[]): SheetNode {
  const filler = joint.kind === 'filler' ? fillerOfJoint(joint, fillers) : undefined;
  const direction = filler?.direction ?? (joint.kind === 'horizontal' ? 'level' : 'upright');
  const spanNm = filler?.spanNm ?? 0;
  const line = {
    direction,
    lengthNm: joint.lengthNm,
    spanNm,
    xNm: filler?.xNm ?? joint.xNm,
    yNm: filler?.yNm ?? joint.yNm,
  };
  const reach = 2.2 + place.long(spanNm) / 2;
  const upright = direction === 'upright';
  const locks = locksAlong(line, joint.locks).map((at) => {
    const [x, y] = [place.x(at.xNm), place.y(at.yNm)];
    const [width, height] = upright ? [2 * reach, 1.2] : [1.2, 2 * reach];
    return rect(filler === undefined ? 'lock' : 'lock-adjustable', {
      x: x - width / 2,
      y: y - height / 2,
      width,
      height,
    });
  });
  return of('g', 'joint', ...locks);
}

/** How many locks a joint has, between its two middle ones. */
export function jointWords(place: Place, joint: LockedJoint, fillers: readonly DrawnPiece[]): SheetNode {
  const box = jointCountBox(place, joint, fillers);
  return of(
    'g',
    'joint-count',
    rect('count-ground', box),
    text(box.x + box.width / 2, box.y + box.height / 2, 'count', countWords(joint)),
  );
}

/** Of a joint that takes no lock it is empty. */
export function jointCountBox(place: Place, joint: LockedJoint, fillers: readonly DrawnPiece[]): BoxMm {
  const filler = joint.kind === 'filler' ? fillerOfJoint(joint, fillers) : undefined;
  const direction = filler?.direction ?? (joint.kind === 'horizontal' ? 'level' : 'upright');
  const long = place.long(joint.lengthNm);
  const span = place.long(filler?.spanNm ?? 0);
  const [x, y] = [place.x(filler?.xNm ?? joint.xNm), place.y(filler?.yNm ?? joint.yNm)];
  // Where a lock would be in the middle, the figure stands half way to the next.
  const along = joint.locks % 2 === 0 ? long / 2 : long / 2 + long / (2 * joint.locks);
  const [cx, cy] = direction === 'upright' ? [x + span / 2, y - along] : [x + along, y - span / 2];
  if (joint.locks === 0) return { x: cx, y: cy, width: 0, height: 0 };
  const width = wordsMm(countWords(joint), 2.4) + 1.2;
  return { x: cx - width / 2, y: cy - 1.7, width, height: 3.4 };
}

function countWords({ locks, kind }: LockedJoint): string {
  return `${locks}${kind === 'filler' ? 'a' : ''}`;
}

export function railPiece(place: Place, rail: DrawnRail): SheetNode {
  const bolts = rail.boltPlaces.map(({ xNm, yNm }) =>
    el('circle', { class: 'bolt', cx: mm(place.x(xNm)), cy: mm(place.y(yNm)), r: '0.75' }),
  );
  return of('g', `rail rail-${rail.neededFor}`, rect('rail-edge', railBox(place, rail)), ...bolts);
}

export function railBox(place: Place, rail: DrawnRail): BoxMm {
  const [x, y, long] = [place.x(rail.xNm), place.y(rail.yNm), place.long(rail.lengthNm)];
  const wide = 2.4;
  return rail.direction === 'upright'
    ? { x: x - wide / 2, y: y - long, width: wide, height: long }
    : { x, y: y - wide / 2, width: long, height: wide };
}

export function holePiece(place: Place, hole: PointNm): SheetNode {
  const [x, y] = [place.x(hole.xNm), place.y(hole.yNm)];
  return of(
    'g',
    'hole',
    el('circle', { class: 'hole-edge', cx: mm(x), cy: mm(y), r: '1.1' }),
    el('path', { class: 'hole-cross', d: `M${mm(x - 1.9)} ${mm(y)}h3.8M${mm(x)} ${mm(y - 1.9)}v3.8` }),
  );
}

/** What a rail is for, where it is not for both. */
export function railWords(place: Place, rail: DrawnRail): readonly SheetNode[] {
  if (rail.neededFor === 'both') return [];
  const box = railBox(place, rail);
  const words = rail.neededFor === 'picking' ? 'pick' : 'placing';
  return rail.direction === 'upright'
    ? [text(box.x + box.width / 2, box.y + box.height / 4, 'rail-words', words, true)]
    : [text(box.x + box.width / 4, box.y + box.height / 2, 'rail-words', words)];
}

/** A walkway bracket, seen end on: a triangle with its flat side up. */
export function bracketPiece(place: Place, bracket: PointNm): SheetNode {
  const [x, y] = [place.x(bracket.xNm), place.y(bracket.yNm)];
  return el('path', {
    class: 'bracket-sign',
    d: `M${mm(x - 1.9)} ${mm(y + 1.3)}h3.8L${mm(x)} ${mm(y + 5)}z`,
  });
}

/** The foot of a brace. */
export function bracePiece(place: Place, brace: PointNm): SheetNode {
  const [x, y] = [place.x(brace.xNm), place.y(brace.yNm)];
  return el('path', { class: 'brace-sign', d: `M${mm(x)} ${mm(y - 4.4)}l1.5 4.4h-3z` });
}

/** A hook over the gang's edge, with its number. */
export function hookPiece(place: Place, hook: DrawnHook, index: number): SheetNode {
  const [x, y] = [place.x(hook.xNm), place.y(hook.yNm)];
  return of(
    'g',
    'hook',
    el('path', {
      class: 'hook-sign',
      d: `M${mm(x)} ${mm(y + 4)}V${mm(y - 1)}m-1.8 0a1.8 1.8 0 1 1 3.6 0M${mm(x - 1.4)} ${mm(y + 4)}h2.8`,
    }),
    text(x + 4.8, y - 2.6, 'sign-words', `H${index + 1}`),
  );
}

/** The quartered circle that marks a centre of gravity on drawings. */
export function centrePiece(place: Place, centre: PointNm): SheetNode {
  const [x, y] = [place.x(centre.xNm), place.y(centre.yNm)];
  return of(
    'g',
    'centre',
    el('circle', { class: 'centre-edge', cx: mm(x), cy: mm(y), r: '2' }),
    el('path', {
      class: 'centre-quarters',
      d: `M${mm(x)} ${mm(y)}h2a2 2 0 0 0 -2 -2zM${mm(x)} ${mm(y)}h-2a2 2 0 0 0 2 2z`,
    }),
  );
}
