// How a gang hangs: seen from its back, to scale, with its slings up to the crane's hook.
import type { PickCheck } from '../pick/pick-check.ts';
import { dimensions, wholeMm } from './drawing-dimensions.ts';
import { text } from './drawing-labels.ts';
import { centrePiece, fillerPiece, hookPiece, panelPiece } from './drawing-pieces.ts';
import { type Place, placeAt } from './drawing-place.ts';
import type { DrawnGang, SheetUnits } from './drawn-gang.ts';
import { sheetWidthMm } from './gang-drawing.ts';
import { el, of, type SheetElement, type SheetNode } from './node.ts';
import { mm, paperScale } from './paper.ts';
import { angleWords } from './pick-words.ts';

const sideMm = wholeMm + 6;
const topMm = 8;

/** `drawn` from its lower left corner, as the places of the check are. */
export function pickDrawing(drawn: DrawnGang, check: PickCheck, units: SheetUnits): SheetElement {
  const apex = check.sling?.apex ?? null;
  // Slings that never meet are drawn straight up for a third of the gang's height.
  const headroomNm = check.sling?.headroomNm ?? null;
  const highNm =
    headroomNm === null ? Math.round(drawn.heightNm * 1.33) : drawn.heightNm + units.atLeastNm(headroomNm);
  const box = { widthMm: sheetWidthMm - 2 * sideMm, heightMm: 118 };
  const scale = paperScale({ widthNm: drawn.widthNm, heightNm: highNm }, box, units.system);
  const wide = drawn.widthNm / 1e6 / scale.ratio;
  const place = placeAt((sheetWidthMm - wide) / 2, topMm, highNm, scale.ratio);
  const height = place.y(0) + wholeMm + 2;
  const size = `${units.length(drawn.widthNm)} long, ${units.length(drawn.heightNm)} high`;
  return of(
    'div',
    'drawing-block',
    el(
      'svg',
      {
        class: 'drawing sling-drawing',
        viewBox: `0 0 ${sheetWidthMm} ${mm(height)}`,
        width: `${sheetWidthMm}mm`,
        height: `${mm(height)}mm`,
        role: 'img',
        'aria-label': `The gang as it hangs, seen from its back, ${size}`,
      },
      ...drawn.panels.map((panel) => panelPiece(place, panel)),
      ...drawn.fillers.map((filler) => fillerPiece(place, filler)),
      ...slings(check, place, highNm),
      ...check.hooks.map((hook, index) => hookPiece(place, hook, index)),
      centrePiece(place, check.centreOfGravity),
      ...dimensions(chainsOf(drawn, check, highNm), place, units, {
        widthNm: drawn.widthNm,
        heightNm: highNm,
      }),
      ...(apex === null || check.sling === null
        ? []
        : [text(place.x(apex.xNm), topMm - 5, 'sign-words', angleWords(check.sling.angleDeg))]),
    ),
    of('p', 'drawing-words', `${wordsUnder(check, units)} Scale ${scale.words} where printed at 100 %.`),
  );
}

function slings(check: PickCheck, place: Place, highNm: number): readonly SheetNode[] {
  const apex = check.sling?.apex ?? null;
  const lines = check.hooks.map((hook) =>
    el('line', {
      class: 'sling',
      x1: mm(place.x(hook.xNm)),
      y1: mm(place.y(hook.yNm)),
      x2: mm(place.x(apex?.xNm ?? hook.xNm)),
      y2: mm(place.y(highNm)),
    }),
  );
  if (apex === null) return lines;
  const [x, y] = [place.x(apex.xNm), place.y(apex.yNm)];
  return [...lines, el('circle', { class: 'crane-hook', cx: mm(x), cy: mm(y), r: '1.4' })];
}

/** Along the foot from the left edge by the hooks to the right; up the side the gang and its headroom. */
function chainsOf(drawn: DrawnGang, check: PickCheck, highNm: number) {
  const cuts = [...new Set([0, ...check.hooks.map(({ xNm }) => xNm), drawn.widthNm])].sort((a, b) => a - b);
  const along = cuts.slice(1).map((toNm, index) => ({ fromNm: cuts[index] ?? 0, toNm }));
  const knows = check.sling !== null && check.sling.headroomNm !== null;
  const headroom = knows ? [{ fromNm: drawn.heightNm, toNm: highNm }] : [];
  return {
    bottom: along,
    top: [],
    left: [],
    right: [{ fromNm: 0, toNm: drawn.heightNm }, ...headroom],
    width: { fromNm: 0, toNm: drawn.widthNm },
    height: { fromNm: 0, toNm: highNm },
  };
}

function wordsUnder({ sling, centreOfGravity }: PickCheck, units: SheetUnits): string {
  const centre = `Centre of gravity ${units.about(centreOfGravity.xNm)} along, ${units.about(centreOfGravity.yNm)} up.`;
  if (sling === null) return `Seen from the back. ${centre} No sling reaches: see the findings.`;
  const { headroomNm, legsNm } = sling;
  if (headroomNm === null || legsNm === null)
    return `Seen from the back. ${centre} The slings stand straight up: their length is yours to enter.`;
  const legs = [...new Set(legsNm.map(units.about))].join(' and ');
  return `Seen from the back. ${centre} Headroom over the gang at least ${units.length(units.atLeastNm(headroomNm))}, legs ${legs}.`;
}
