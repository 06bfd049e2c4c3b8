// A load drawn to scale: from the left side, cab at the left, a row for the stacks that stand behind one another; and
// from above, with the numbers of the stacks.
import { sheetWidthMm } from './gang-drawing.ts';
import { text, wordsMm } from './drawing-labels.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { type DrawnStack, type LoadBox, loadPlaces, rulingPath } from './load-places.ts';
import { el, of, type SheetElement, type SheetNode } from './node.ts';
import { mm, paperScale } from './paper.ts';

interface Deck {
  readonly deckLengthNm: number;
  readonly deckWidthNm: number;
  readonly stackHeightNm: number;
}

const cabMm = 12;
const gapMm = 9;
const wordHeightMm = 2.6;

export function loadDrawing(stacks: readonly DrawnStack[], deck: Deck, units: SheetUnits): SheetElement {
  const { sides, above } = loadPlaces(stacks);
  const highNm = sides.length * deck.stackHeightNm + deck.deckWidthNm;
  const scale = paperScale(
    { widthNm: deck.deckLengthNm, heightNm: highNm },
    { widthMm: sheetWidthMm - cabMm - 4, heightMm: 120 },
    units.system,
  );
  const paper = (lengthNm: number): number => lengthNm / 1e6 / scale.ratio;
  const left = cabMm + 2;
  const [length, high, wide] = [paper(deck.deckLengthNm), paper(deck.stackHeightNm), paper(deck.deckWidthNm)];
  const drawn: SheetNode[] = [];
  let top = 5;
  for (const [lane, boxes] of sides.entries()) {
    const deckAt = top + high;
    drawn.push(
      text(left + length / 2, top - 2.2, 'dim-words', sideWords(lane, sides.length)),
      el('rect', { class: 'load-room', x: mm(left), y: mm(top), width: mm(length), height: mm(high) }),
      ...boxes.flatMap((box) =>
        drawBox(box, left + paper(box.xNm), deckAt - paper(box.yNm + box.acrossNm), paper),
      ),
      ...drawTruck(left, deckAt, length),
    );
    top = deckAt + gapMm;
  }
  drawn.push(
    text(left + length / 2, top - 2.2, 'dim-words', 'from above: numbers of the stacks'),
    el('rect', { class: 'load-deck', x: mm(left), y: mm(top), width: mm(length), height: mm(wide) }),
    text(left - 6, top + wide / 2, 'dim-words', 'cab'),
    ...above.flatMap((box) => {
      const [x, y] = [left + paper(box.xNm), top + paper(box.yNm)];
      const [width, height] = [paper(box.lengthNm), paper(box.acrossNm)];
      return [
        el('rect', { class: 'load-box', x: mm(x), y: mm(y), width: mm(width), height: mm(height) }),
        text(x + width / 2, y + height / 2, 'count', String(box.stack)),
      ];
    }),
  );
  const height = top + wide + 2;
  return of(
    'section',
    'part drawing-block',
    el(
      'svg',
      {
        class: 'drawing',
        role: 'img',
        'aria-label': `The load: ${stacks.length} stacks on a deck of ${units.length(deck.deckLengthNm)}`,
        viewBox: `0 0 ${sheetWidthMm} ${mm(height)}`,
        width: `${sheetWidthMm}mm`,
        height: `${mm(height)}mm`,
      },
      ...drawn,
    ),
    of(
      'p',
      'drawing-words',
      `Scale ${scale.words}. In each box its stop, then what it is. Broken line: as high as it may be stacked. Ruled: stop 2 upright, 3 level, 4 both.`,
    ),
  );
}

function sideWords(lane: number, lanes: number): string {
  if (lanes === 1) return 'from the side';
  return lane === 0
    ? 'from the side: stacks at the left edge of the deck'
    : `from the side: stacks ${lane + 1} from the left`;
}

function drawBox(
  box: LoadBox,
  x: number,
  y: number,
  paper: (lengthNm: number) => number,
): readonly SheetNode[] {
  const [width, height] = [paper(box.lengthNm), paper(box.acrossNm)];
  const ruled = rulingPath({ x, y, width, height }, box.stop, 2);
  const full = `${box.stop}: ${box.words}`;
  const fits = wordsMm(full, wordHeightMm) < width && height > wordHeightMm;
  return [
    el('rect', { class: 'load-box', x: mm(x), y: mm(y), width: mm(width), height: mm(height) }),
    ...(ruled === '' ? [] : [el('path', { class: 'load-ruled', d: ruled })]),
    ...(height > wordHeightMm
      ? [text(x + width / 2, y + height / 2, 'load-words', fits ? full : String(box.stop))]
      : []),
  ];
}

/** The deck as a bar, the cab in front of it, two axles. */
function drawTruck(left: number, deckAt: number, length: number): readonly SheetNode[] {
  return [
    el('rect', { class: 'load-deck', x: mm(left), y: mm(deckAt), width: mm(length), height: '0.8' }),
    el('path', {
      class: 'load-deck',
      d: `M${mm(left - 1)} ${mm(deckAt + 1)}h${mm(-cabMm + 2)}v-6l3 -5h${mm(cabMm - 5)}z`,
    }),
    ...[left - 6, left + length * 0.78, left + length * 0.86].map((x) =>
      el('circle', { class: 'load-deck', cx: mm(x), cy: mm(deckAt + 2.4), r: '1.8' }),
    ),
  ];
}
