import { describe, expect, test } from 'vitest';
import { inchNm } from '../../../core/units/length.ts';
import { dimensionLabels } from '../../../renderer/screens/designs/dimension-labels.ts';
import { dimensionWords, sizeWords } from '../../../renderer/screens/designs/size-words.ts';

function chain(...inches: number[]) {
  let at = 0;
  return inches.map((length) => {
    const fromNm = at;
    at += length * inchNm;
    return { fromNm, toNm: at };
  });
}
const words = (lengthNm: number): string => dimensionWords(lengthNm, 'us');
const levels = (...inches: number[]): number[] =>
  // At 2 px an inch a label such as 3'-0" takes 29.6 px, which is 14.8 in.
  dimensionLabels(chain(...inches), 2 / inchNm, words).map(({ level }) => level);

describe('numbers on dimension lines', () => {
  test('36 in have room on the line, a filler of 4 in goes under it', () => {
    expect(levels(36, 4, 36)).toEqual([0, 1, 0]);
  });
  test('of two narrow neighbours the second goes further under', () => {
    expect(levels(36, 4, 4, 36)).toEqual([0, 1, 2, 0]);
  });
  test('three narrow ones take turns, so that no two that touch are level', () => {
    expect(levels(4, 4, 4)).toEqual([1, 2, 1]);
  });
});

describe('sizes as drawings write them', () => {
  const [width, height] = [36 * inchNm, 96 * inchNm];
  test('feet and inches carry their marks', () => {
    expect(sizeWords(width, height, 'us')).toBe(`3'-0" × 8'-0"`);
  });
  test('millimetres are named once', () => {
    expect(sizeWords(width, height, 'metric')).toBe('914.4 × 2438.4 mm');
  });
});
