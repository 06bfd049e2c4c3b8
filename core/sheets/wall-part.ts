// Where the gang stands in its wall: one side of a pour seen from that side's back, this gang marked. A wall is
// measured as seen from side A, so that side B is drawn the other way round, as the crew in front of it sees it.
import type { SideName } from '../plan/pours.ts';
import { levelChain } from './drawing-dimensions.ts';
import { text, wordsMm } from './drawing-labels.ts';
import { rect } from './drawing-pieces.ts';
import { boxOf, type BoxMm, type Place, placeAt } from './drawing-place.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { sheetWidthMm } from './gang-drawing.ts';
import { el, of, type SheetElement, type SheetNode } from './node.ts';
import { mm } from './paper.ts';

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
  // Two sides stand beside each other.
  const widthMm = walls.length > 1 ? (sheetWidthMm - 6) / 2 : sheetWidthMm;
  return of(
    'section',
    'part wall',
    of('h2', 'part-name', 'Where it stands, seen from its back'),
    of('div', 'wall-sides', ...walls.map((wall) => wallSide(design, wall, widthMm, units))),
    ...(others === '' ? [] : [of('p', 'plain', others)]),
  );
}

function wallSide(design: string, wall: WallSide, widthMm: number, units: SheetUnits): SheetElement {
  const gangs = seenFromBack(wall.side, wall.gangs);
  const size = {
    widthNm: Math.max(...gangs.map(({ atNm, widthNm }) => atNm + widthNm)),
    heightNm: Math.max(...gangs.map(({ heightNm }) => heightNm)),
  };
  // Its lengths are written on it: it needs no scale that people have a rule for.
  const ratio = Math.max(size.widthNm / 1e6 / (widthMm - 6), size.heightNm / 1e6 / 20);
  const place = placeAt(3, 1, size.heightNm, ratio);
  const line = place.y(0) + 5;
  const height = line + 5;
  return of(
    'div',
    'wall-block',
    of(
      'p',
      'plain',
      of('strong', 'wall-name', `${wall.pour} side ${wall.side}`),
      ` ${wall.pourName}; framed: ${design}`,
    ),
    el(
      'svg',
      {
        class: 'drawing',
        viewBox: `0 0 ${mm(widthMm)} ${mm(height)}`,
        width: `${mm(widthMm)}mm`,
        height: `${mm(height)}mm`,
        role: 'img',
        'aria-label': `Side ${wall.side} of ${wall.pour} from its back: ${gangs.map((gang) => gang.design).join(', ')}`,
      },
      ...gangs.flatMap((gang) => wallGang(gang, design, place)),
      ...levelChain(
        gangs.map(({ atNm, widthNm }) => ({ fromNm: atNm, toNm: atNm + widthNm })),
        place,
        line,
        units,
      ),
    ),
  );
}

function wallGang(gang: WallGang, design: string, place: Place): readonly SheetNode[] {
  const isThis = gang.design === design;
  const box = boxOf(place, { xNm: gang.atNm, yNm: 0, widthNm: gang.widthNm, heightNm: gang.heightNm });
  const turned = wordsMm(gang.design, 3.2) > box.width - 1;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return [
    rect('wall-gang', box),
    ...(isThis ? [rect('wall-this', inset(box))] : []),
    text(x, y, isThis ? 'wall-code wall-code-this' : 'wall-code', gang.design, turned),
  ];
}

/** The frame lies inside, so that it hides no neighbour. */
function inset({ x, y, width, height }: BoxMm): BoxMm {
  const by = Math.min(1.1, width / 4);
  return { x: x + by, y: y + by, width: width - 2 * by, height: height - 2 * by };
}
