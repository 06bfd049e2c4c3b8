// How yards write their counts, as their stock lists and count sheets show it: common practice, no source.
import { describe, expect, test } from 'vitest';
import { readCounted } from '../../core/yard/counted-text.ts';

const read = (text: string, bundle: number | null = null) => {
  const found = readCounted(text, 'TR', bundle);
  return found.ok ? [found.value.quantity, found.value.uncertainty] : found.error.code;
};

describe('a counted figure as it is written', () => {
  test.each([
    ['61', [61, 0]],
    [' 0 ', [0, 0]],
    ['40 + 6', [46, 0]],
    ['40+6+2', [48, 0]],
    ['12 x 20', [240, 0]],
    ['12×20 + 3', [243, 0]],
    ['~20', [20, 20]],
    ['about 20', [20, 20]],
    ['61 + ~20', [81, 20]],
    ['61 + ~20 ± 5', [81, 5]],
    ['61 + ~20 +/- 5', [81, 5]],
    ['340 ± 12', [340, 12]],
  ])('%s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test('12 bundles are 240 where a bundle is 20, and a question where nobody has said', () => {
    expect(read('12 bdl', 20)).toEqual([240, 0]);
    expect(read('12 bundles + 7', 20)).toEqual([247, 0]);
    expect(read('~12 bdl', 20)).toEqual([240, 240]);
    expect(read('12 bdl')).toBe('bundle-size-unknown');
    expect(readCounted('12 bdl', 'TR', null)).toMatchObject({
      error: { message: expect.stringContaining('TR') },
    });
  });

  test.each(['', 'some', '-5', '1.5', '1,250', '40 (2 bent)', '12/6', '61 +', '2 x', '1e3'])(
    '%j is refused',
    (text) => {
      expect(read(text)).toBe('count-unreadable');
    },
  );

  test('more than can be counted is refused', () => {
    expect(read('9999999999')).toBe('count-too-great');
  });
});
