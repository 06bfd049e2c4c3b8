// The numbers on a level chain of dimensions: on the line where they fit between its ticks, else under it,
// and further under where two of those would touch.
import type { Stretch } from './dimension-chains.ts';

export interface DimensionLabel {
  readonly stretch: Stretch;
  readonly words: string;
  /** 0 on the line, 1 and 2 under it. */
  readonly level: 0 | 1 | 2;
}

/** Width of a text of 12 px, by the width of a usual digit. */
export function wordsPx(words: string): number {
  return words.length * 6.4 + 4;
}

export function dimensionLabels(
  stretches: readonly Stretch[],
  pxPerNm: number,
  wordsOf: (lengthNm: number) => string,
): DimensionLabel[] {
  let endPx = Number.NEGATIVE_INFINITY;
  let last: 1 | 2 = 2;
  return stretches.map((stretch) => {
    const lengthNm = stretch.toNm - stretch.fromNm;
    const words = wordsOf(lengthNm);
    if (lengthNm * pxPerNm > wordsPx(words)) return { stretch, words, level: 0 };
    const middlePx = ((stretch.fromNm + stretch.toNm) / 2) * pxPerNm;
    const touches = middlePx - wordsPx(words) / 2 < endPx;
    const level = touches && last === 1 ? 2 : 1;
    endPx = middlePx + wordsPx(words) / 2;
    last = level;
    return { stretch, words, level };
  });
}
