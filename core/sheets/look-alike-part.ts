// Look-alikes side by side, drawn to one scale, with what tells them apart under each: the picture that a counter holds
// next to the pieces.
import { type BoxMm, type Place, placeAt } from './drawing-place.ts';
import { rect } from './drawing-pieces.ts';
import { text, wordsMm } from './drawing-labels.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { el, of, type SheetElement } from './node.ts';
import { mm, paperScale } from './paper.ts';

export interface SheetSize {
  readonly code: string;
  readonly name: string;
  readonly widthNm: number | null;
  readonly heightNm: number | null;
  readonly lengthNm: number | null;
  readonly weightGrams: number;
}

export interface SheetPair {
  readonly one: SheetSize;
  readonly other: SheetSize;
  readonly measure: {
    readonly what: 'width' | 'height' | 'length';
    readonly oneNm: number;
    readonly otherNm: number;
  } | null;
  /** In words, as somebody entered it. */
  readonly tellApart: string;
}

const pictureMm = { width: 86, height: 40 } as const;
/** Things of one length are drawn as bars: how thick is not known. */
const barNm = 100_000_000;
const gapNm = 250_000_000;
const labelMm = 3.6;

export function lookAlikePart(pairs: readonly SheetPair[], units: SheetUnits): readonly SheetElement[] {
  if (pairs.length === 0) return [];
  return [
    of(
      'section',
      'part look-alikes',
      of('h2', 'part-name', 'Taken for each other: count them one after the other'),
      of('div', 'pair-list', ...pairs.map((pair) => pairBlock(pair, units))),
    ),
  ];
}

export function pairBlock(pair: SheetPair, units: SheetUnits): SheetElement {
  const { one, other, measure, tellApart } = pair;
  const picture = pairPicture(pair, units);
  const apart =
    measure === null
      ? []
      : [`${measure.what}: ${units.length(measure.oneNm)} against ${units.length(measure.otherNm)}`];
  return of(
    'div',
    'pair-block',
    of(
      'p',
      'pair-names',
      of('strong', 'pair-code', one.code),
      ` ${one.name} · `,
      of('strong', 'pair-code', other.code),
      ` ${other.name}`,
    ),
    ...(picture === null ? [] : [picture]),
    of('p', 'pair-apart', [...apart, ...(tellApart === '' ? [] : [tellApart])].join('; ')),
    of(
      'p',
      'soft',
      `${one.code} weighs ${units.weight(one.weightGrams)}, ${other.code} ${units.weight(other.weightGrams)}.`,
    ),
  );
}

interface Outline {
  readonly code: string;
  readonly widthNm: number;
  readonly heightNm: number;
}

/** Both standing on one line, at one scale; null where the catalogue does not know their sizes. */
export function pairPicture({ one, other }: SheetPair, units: SheetUnits): SheetElement | null {
  const outlines = [outlineOf(one), outlineOf(other)].filter((each) => each !== null);
  const [left, right] = outlines;
  if (left === undefined || right === undefined) return null;
  // Bars lie one over the other, so that their lengths begin at one line.
  const areBars =
    one.lengthNm !== null && other.lengthNm !== null && one.widthNm === null && other.widthNm === null;
  const size = areBars
    ? { widthNm: Math.max(left.widthNm, right.widthNm), heightNm: 3 * gapNm }
    : { widthNm: left.widthNm + gapNm + right.widthNm, heightNm: Math.max(left.heightNm, right.heightNm) };
  const scale = paperScale(
    size,
    { widthMm: pictureMm.width - 4, heightMm: pictureMm.height - 10 },
    units.system,
  );
  const place = placeAt(2, 2, size.heightNm, scale.ratio);
  const atMm = areBars ? place.x(0) : secondMm(left, right, place);
  const at = (outline: Outline, index: number): BoxMm => ({
    x: index === 0 ? place.x(0) : atMm,
    y: areBars ? place.y((index === 0 ? 2.2 : 0.8) * gapNm) : place.y(outline.heightNm),
    width: place.long(outline.widthNm),
    height: place.long(outline.heightNm),
  });
  const height = place.y(0) + 8;
  const shapes = [left, right].flatMap((outline, index) => {
    const box = at(outline, index);
    const beside = areBars ? box.y - 2 : place.y(0) + 4;
    return [
      rect('panel', box),
      text(areBars ? box.x + 8 : box.x + box.width / 2, beside, 'pair-label', outline.code),
    ];
  });
  return el(
    'svg',
    {
      class: 'drawing pair-picture',
      role: 'img',
      'aria-label': `${left.code} and ${right.code} at ${scale.words}`,
      viewBox: `0 0 ${mm(pictureMm.width)} ${mm(height)}`,
      width: `${mm(pictureMm.width)}mm`,
      height: `${mm(height)}mm`,
    },
    ...shapes,
    text(pictureMm.width - 14, height - 2, 'pair-scale', scale.words.split(',')[0] ?? ''),
  );
}

/** Where the second one begins: their codes under them do not run into each other. */
function secondMm(left: Outline, right: Outline, place: Place): number {
  const half = (outline: Outline): number =>
    Math.max(place.long(outline.widthNm), wordsMm(outline.code, labelMm)) / 2;
  const middle = place.x(0) + place.long(left.widthNm) / 2;
  const least = middle + half(left) + half(right) + 2 - place.long(right.widthNm) / 2;
  return Math.max(place.x(left.widthNm + gapNm), least);
}

function outlineOf({ code, widthNm, heightNm, lengthNm }: SheetSize): Outline | null {
  if (widthNm !== null && heightNm !== null) return { code, widthNm, heightNm };
  if (lengthNm === null) return null;
  return { code, widthNm: lengthNm, heightNm: widthNm ?? barNm };
}
