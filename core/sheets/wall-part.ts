// Where the gang stands in its wall: one side of a pour seen from that side's back, this gang marked. A wall is
// measured as seen from side A, so that side B is drawn the other way round, as the crew in front of it sees it.
import type { SideName } from '../plan/pours.ts';
import { text, wordsMm } from './drawing-labels.ts';
import { rect } from './drawing-pieces.ts';
import { placeAt } from './drawing-place.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { sheetWidthMm } from './gang-drawing.ts';
import { el, of, type SheetElement, type SheetNode } from './node.ts';
import { mm, paperScale } from './paper.ts';

export interface WallGang {
  readonly design: string;
  /** Its left edge as seen from side A. */
  readonly atNm: number;
  readonly widthNm: number;
  readonly heightNm: number;
}

export interface WallSide {
  readonly pour: string;
  readonly pourName: string;
  readonly side: SideName;
  readonly gangs: readonly WallGang[];
}

/** Gangs from the left as seen from the back of their side, lengths from the leftmost edge. */
export function seenFromBack(side: SideName, gangs: readonly WallGang[]): readonly WallGang[] {
  const left = Math.min(...gangs.map(({ atNm }) => atNm));
  const right = Math.max(...gangs.map(({ atNm, widthNm }) => atNm + widthNm));
  return gangs
    .map((gang) => ({ ...gang, atNm: side === 'A' ? gang.atNm - left : right - gang.atNm - gang.widthNm }))
    .sort((one, other) => one.atNm - other.atNm);
}

export function wallPart(
  design: string,
  walls: readonly WallSide[],
  others: string,
  units: SheetUnits,
): SheetElement {
  return of(
    'section',
    'part wall',
    of('h2', 'part-name', 'Where it stands'),
    ...walls.map((wall) => wallDrawing(design, wall, units)),
    ...(others === '' ? [] : [of('p', 'plain', others)]),
  );
}

function wallDrawing(design: string, wall: WallSide, units: SheetUnits): SheetElement {
  const gangs = seenFromBack(wall.side, wall.gangs);
  const size = {
    widthNm: Math.max(...gangs.map(({ atNm, widthNm }) => atNm + widthNm)),
    heightNm: Math.max(...gangs.map(({ heightNm }) => heightNm)),
  };
  const scale = paperScale(size, { widthMm: sheetWidthMm - 8, heightMm: 28 }, units.system);
  const [wide, high] = [size.widthNm / 1e6 / scale.ratio, size.heightNm / 1e6 / scale.ratio];
  const place = placeAt((sheetWidthMm - wide) / 2, 1, size.heightNm, scale.ratio);
  const height = high + 8;
  const marks = gangs.flatMap((gang): SheetNode[] => {
    const piece = { xNm: gang.atNm, yNm: 0, widthNm: gang.widthNm, heightNm: gang.heightNm };
    const [x, y] = [place.x(gang.atNm + gang.widthNm / 2), place.y(gang.heightNm / 2)];
    const isThis = gang.design === design;
    const box = {
      x: place.x(gang.atNm),
      y: place.y(gang.heightNm),
      width: place.long(piece.widthNm),
      height: place.long(piece.heightNm),
    };
    const turned = wordsMm(gang.design, 3.2) > box.width - 1;
    const along = place.x(gang.atNm);
    return [
      rect('wall-gang', box),
      ...(isThis ? [rect('wall-this', inset(box))] : []),
      text(x, y, isThis ? 'wall-code wall-code-this' : 'wall-code', gang.design, turned),
      el('line', {
        class: 'dim',
        x1: mm(along),
        x2: mm(along),
        y1: mm(place.y(0)),
        y2: mm(place.y(0) + 1.5),
      }),
      text(x, place.y(0) + 4, 'dim-words', units.dimension(gang.widthNm)),
    ];
  });
  const count = gangs.filter((gang) => gang.design === design).length;
  const places = count === 1 ? 'its place is' : `its ${count} places are`;
  return of(
    'div',
    'wall-block',
    of(
      'p',
      'plain',
      of('strong', 'wall-name', `${wall.pour} ${wall.pourName}, side ${wall.side}`),
      ` from its back: ${places} framed and in bold. Scale ${scale.words} where printed at 100 %.`,
    ),
    el(
      'svg',
      {
        class: 'drawing',
        viewBox: `0 0 ${sheetWidthMm} ${mm(height)}`,
        width: `${sheetWidthMm}mm`,
        height: `${mm(height)}mm`,
        role: 'img',
        'aria-label': `Side ${wall.side} of ${wall.pour} from its back: ${gangs.map((gang) => gang.design).join(', ')}`,
      },
      ...marks,
    ),
  );
}

/** The frame lies inside, so that it hides no neighbour. */
function inset({ x, y, width, height }: { x: number; y: number; width: number; height: number }) {
  const by = Math.min(1.1, width / 4);
  return { x: x + by, y: y + by, width: width - 2 * by, height: height - 2 * by };
}
