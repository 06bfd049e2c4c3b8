import { describe, expect, test } from 'vitest';
import { inchNm } from '../../../core/units/length.ts';
import { dimensionChains, type Stretch } from '../../../renderer/screens/designs/dimension-chains.ts';
import { numbered, pins } from '../../../renderer/screens/designs/finding-pins.ts';
import { placeInWords, reasonGroups } from '../../../renderer/screens/designs/reason-words.ts';
import { sample } from './sample-design.ts';

const lengths = (chain: readonly Stretch[] | undefined) =>
  chain?.map(({ fromNm, toNm }) => (toNm - fromNm) / inchNm);

describe('dimension chains', () => {
  const chains = dimensionChains([...sample.panels, ...sample.fillers]);
  test('along the bottom 36, 6, 36; along the top 78, as one panel on its side covers it', () => {
    expect(lengths(chains?.bottom)).toEqual([36, 6, 36]);
    expect(lengths(chains?.top)).toEqual([78]);
  });
  test('at the left 108, 24; not again at the right, where it is the same', () => {
    expect(lengths(chains?.left)).toEqual([108, 24]);
    expect(chains?.right).toEqual([]);
  });
  test('over all 78 by 132', () => {
    expect(lengths(chains && [chains.width, chains.height])).toEqual([78, 132]);
  });
  test('nothing placed, no chains', () => expect(dimensionChains([])).toBeUndefined());
});

describe('findings', () => {
  const list = numbered(sample.findings);
  test('stops come first, then cautions, then notes, numbered from 1', () => {
    expect(list.map(({ number, finding }) => `${number} ${finding.severity}`)).toEqual([
      '1 stop',
      '2 caution',
      '3 note',
    ]);
  });
  test('two at one point get pins beside each other, one without a place gets none', () => {
    expect(pins(list).map(({ number, beside }) => [number, beside])).toEqual([
      [1, 0],
      [2, 1],
    ]);
  });
});

describe('reasons in words', () => {
  test('two joints of two locks are one group of 2 at 2 places, 4 in all', () => {
    const lock = sample.lines.find(({ component }) => component === 'LK');
    expect(reasonGroups(lock?.because ?? [])).toMatchObject([{ rule: 'locks', each: 2, count: 4 }]);
  });
  test('a place is told in the units of the reader', () => {
    const place = { xNm: 42 * inchNm, yNm: 108 * inchNm };
    expect(placeInWords(place, 'us')).toBe(`3'-6" along, 9'-0" up`);
    expect(placeInWords(place, 'metric')).toBe('1066.8 mm along, 2743.2 mm up');
  });
  test('a place in words stays as it is', () => expect(placeInWords('both ends', 'us')).toBe('both ends'));
});
