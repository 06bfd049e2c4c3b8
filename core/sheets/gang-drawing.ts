// A gang seen from its back, to scale, as the crew sees it when it lies face down in front of them.
import { chainMm, dimensions, wholeMm } from './drawing-dimensions.ts';
import { legend } from './drawing-legend.ts';
import { dimensionChains } from './dimension-chains.ts';
import { text } from './drawing-labels.ts';
import {
  bracePiece, bracketPiece, centrePiece, fillerPiece, holePiece, hookPiece, jointCountBox, jointPiece, jointWords, panelPiece, panelWords, railBox, railPiece,
  railWords,
} from './drawing-pieces.ts'; // prettier-ignore
import { boxAround, type BoxMm, type Place, placeAt } from './drawing-place.ts';
import type { DrawnGang, SheetUnits } from './drawn-gang.ts';
import { type NumberedFinding } from './findings-part.ts';
import { el, of, type SheetNode } from './node.ts';
import { mm, paperScale } from './paper.ts';

/** The width that is left between the margins of both papers. */
export const sheetWidthMm = 186;
/** With many findings above it the gang is drawn smaller, to stay on the first page. */
function mostHighMm(findings: number): number {
  return Math.min(130, Math.max(80, 144 - 7 * findings));
}

/** Room for dimensions and edge names beside, above and below the gang. */
const leftMm = wholeMm + 4;
const rightMm = chainMm + 4;
const bottomMm = wholeMm + 2;

export function gangDrawing(
  gang: DrawnGang,
  findings: readonly NumberedFinding[],
  units: SheetUnits,
): SheetNode {
  const chains = dimensionChains([...gang.panels, ...gang.fillers]);
  const over = railsOver(gang);
  const scale = paperScale(
    {
      widthNm: over.leftNm + gang.widthNm + over.rightNm,
      heightNm: over.topNm + gang.heightNm + over.bottomNm,
    },
    { widthMm: sheetWidthMm - leftMm - rightMm, heightMm: mostHighMm(findings.length) },
    units.system,
  );
  const paper = (lengthNm: number): number => lengthNm / 1e6 / scale.ratio;
  const left = Math.max(
    leftMm + paper(over.leftNm),
    (sheetWidthMm - paper(gang.widthNm)) / 2 - paper(over.rightNm),
  );
  const chainTopMm = chains !== undefined && chains.top.length > 0 ? chainMm + 6 : 6;
  const topMm = Math.max(chainTopMm, paper(over.topNm) + 2);
  const place = placeAt(left, topMm, gang.heightNm, scale.ratio);
  const height = topMm + paper(gang.heightNm) + Math.max(bottomMm, paper(over.bottomNm) + 2);
  const hidden = inTheWay(gang, place);
  const size = `${units.length(gang.widthNm)} long, ${units.length(gang.heightNm)} high`;
  const drawing = el(
    'svg',
    {
      class: 'drawing',
      viewBox: `0 0 ${sheetWidthMm} ${mm(height)}`,
      width: `${sheetWidthMm}mm`,
      height: `${mm(height)}mm`,
      role: 'img',
      'aria-label': `The gang seen from its back, ${size}`,
    },
    ...gang.panels.map((panel) => panelPiece(place, panel)),
    ...gang.fillers.map((filler) => fillerPiece(place, filler)),
    ...gang.rails.map((rail) => railPiece(place, rail)),
    ...gang.joints.map((joint) => jointPiece(place, joint, gang.fillers)),
    ...gang.holes.map((hole) => holePiece(place, hole)),
    ...gang.joints.filter(({ locks }) => locks > 0).map((joint) => jointWords(place, joint, gang.fillers)),
    ...gang.panels.map((panel) => panelWords(place, panel, hidden)),
    ...gang.rails.flatMap((rail) => railWords(place, rail)),
    ...gang.brackets.map((bracket) => bracketPiece(place, bracket)),
    ...gang.braces.map((brace) => bracePiece(place, brace)),
    ...gang.hooks.map((hook, index) => hookPiece(place, hook, index)),
    centrePiece(place, gang.centreOfGravity),
    ...findings.flatMap((finding) => pin(finding, place)),
    ...edgeNames(gang, place),
    ...(chains === undefined ? [] : dimensions(chains, place, units, gang)),
  );
  const kept = units.system === 'us' ? '' : ', dimensions in mm';
  return of(
    'div',
    'drawing-block',
    drawing,
    of('p', 'drawing-words', `Seen from the back. Scale ${scale.words} where printed at 100 %${kept}.`),
    legend(gang),
  );
}

/** How far rails reach past the gang's edges. */
function railsOver({ rails, widthNm, heightNm }: DrawnGang) {
  const level = rails.filter(({ direction }) => direction === 'level');
  const upright = rails.filter(({ direction }) => direction === 'upright');
  return {
    leftNm: Math.max(0, ...level.map(({ xNm }) => -xNm)),
    rightNm: Math.max(0, ...level.map(({ xNm, lengthNm }) => xNm + lengthNm - widthNm)),
    bottomNm: Math.max(0, ...upright.map(({ yNm }) => -yNm)),
    topNm: Math.max(0, ...upright.map(({ yNm, lengthNm }) => yNm + lengthNm - heightNm)),
  };
}

/** What the code of a panel must not hide: rails, holes, signs, and the count of each joint's locks. */
function inTheWay(gang: DrawnGang, place: Place): readonly BoxMm[] {
  return [
    ...gang.rails.map((rail) => railBox(place, rail)),
    ...gang.joints.map((joint) => jointCountBox(place, joint, gang.fillers)),
    ...gang.holes.map((hole) => boxAround(place, hole, 4.2, 4.2)),
    ...gang.brackets.map((bracket) => boxAround(place, bracket, 6, 12)),
    ...gang.braces.map((brace) => boxAround(place, brace, 5, 10)),
    boxAround(place, gang.centreOfGravity, 5, 5),
    ...gang.hooks.map((hook) => boxAround(place, hook, 12, 10)),
  ];
}

/** The number of a finding in a box at its place; a stop is white on black. */
function pin({ number, finding }: NumberedFinding, place: Place): readonly SheetNode[] {
  const { where, severity } = finding;
  if (where === undefined || typeof where === 'string' || severity === 'note') return [];
  const { x, y, width, height } = boxAround(place, where, number > 9 ? 6 : 4.4, 4.4);
  const className = severity === 'stop' ? 'pin pin-stop' : 'pin';
  const edge = el('rect', { class: 'pin-edge', x: mm(x), y: mm(y), width: mm(width), height: mm(height) });
  return [of('g', className, edge, text(x + width / 2, y + height / 2, 'pin-words', String(number)))];
}

function edgeNames({ edges, heightNm, widthNm }: DrawnGang, place: Place): readonly SheetNode[] {
  const middle = (place.y(heightNm) + place.y(0)) / 2;
  const names = [
    [place.x(0) - 1.8, edges.left],
    [place.x(widthNm) + 2.2, edges.right],
  ] as const;
  return names.map(([x, name]) => text(x, middle, 'edge-name', edgeWords(name), true));
}

function edgeWords(edge: string): string {
  return edge === 'open' ? 'open edge' : edge.replaceAll('-', ' ');
}
