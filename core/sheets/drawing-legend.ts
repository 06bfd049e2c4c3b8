// The signs of a drawing explained under it, drawn by the same functions as on it.
import { never } from '../answer.ts';
import {
  bracePiece,
  bracketPiece,
  centrePiece,
  fillerPiece,
  holePiece,
  railPiece,
} from './drawing-pieces.ts';
import { placeAt } from './drawing-place.ts';
import type { DrawnGang } from './drawn-gang.ts';
import { el, of, type SheetNode } from './node.ts';
import { mm } from './paper.ts';

type Sign = 'lock' | 'adjustable' | 'rail' | 'hole' | 'hook' | 'bracket' | 'brace' | 'centre' | 'filler';

/** Only what stands on this drawing is explained. */
export function legend(gang: DrawnGang): SheetNode {
  const signs: readonly (readonly [Sign, boolean, string])[] = [
    [
      'lock',
      gang.joints.some(({ kind }) => kind !== 'filler'),
      'lock; the figure counts the locks of the joint',
    ],
    [
      'adjustable',
      gang.joints.some(({ kind }) => kind === 'filler'),
      'adjustable lock over a filler; figure with a',
    ],
    ['filler', gang.fillers.length > 0, 'filler'],
    ['rail', gang.rails.length > 0, railLegend(gang)],
    ['hole', gang.holes.length > 0, 'tie hole'],
    ['hook', gang.hooks.length > 0, 'lifting hook'],
    ['bracket', gang.brackets.length > 0, 'walkway bracket'],
    ['brace', gang.braces.length > 0, 'brace'],
    ['centre', true, 'centre of gravity'],
  ];
  const shown = signs.filter(([, is]) => is);
  return of(
    'div',
    'legend',
    ...shown.map(([sign, , words]) => of('span', 'legend-entry', signPicture(sign), words)),
  );
}

function railLegend({ rails }: DrawnGang): string {
  const plain = 'stiffening rail with its bolts';
  return rails.every(({ neededFor }) => neededFor === 'both')
    ? plain
    : `${plain}; "pick": needed for picking alone (heavy), "placing": for placing alone (broken)`;
}

function signPicture(sign: Sign): SheetNode {
  return el(
    'svg',
    { class: 'legend-sign', viewBox: '0 0 8 8', width: '6.5mm', height: '6.5mm', 'aria-hidden': 'true' },
    signNode(sign),
  );
}

function signNode(sign: Sign): SheetNode {
  const middle = { xNm: 0, yNm: 0 };
  const place = placeAt(4, 4, 0, 1);
  const box = { x: 1.6, y: 2, width: 4.8, height: 4 };
  const piece = { xNm: -3e6, yNm: -2e6, widthNm: 6e6, heightNm: 4e6 };
  switch (sign) {
    case 'lock':
      return el('rect', { class: 'lock', x: mm(box.x), y: '3.4', width: '4.8', height: '1.2' });
    case 'adjustable':
      return el('rect', { class: 'lock-adjustable', x: mm(box.x), y: '3.4', width: '4.8', height: '1.2' });
    case 'filler':
      return fillerPiece(place, piece);
    case 'rail':
      return railPiece(place, {
        component: '',
        direction: 'level',
        xNm: -4e6,
        yNm: 0,
        lengthNm: 8e6,
        bolts: 2,
        boltPlaces: [
          { xNm: -2e6, yNm: 0 },
          { xNm: 2e6, yNm: 0 },
        ],
        neededFor: 'both',
      });
    case 'hole':
      return holePiece(place, middle);
    case 'hook':
      return el('path', { class: 'hook-sign', d: 'M4 7V3m-1.8 0a1.8 1.8 0 1 1 3.6 0M2.6 7h2.8' });
    case 'bracket':
      return bracketPiece(placeAt(4, 0.8, 0, 1), middle);
    case 'brace':
      return bracePiece(placeAt(4, 6.2, 0, 1), middle);
    case 'centre':
      return centrePiece(place, middle);
    default:
      return never(sign);
  }
}
