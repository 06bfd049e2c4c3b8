import { describe, expect, test } from 'vitest';
import { footNm, inchNm, millimetreNm } from '../../../core/units/length.ts';
import {
  type CellKind,
  printValue,
  readValue,
  withUnit,
} from '../../../renderer/screens/rules/cell-kinds.ts';

const read = (as: CellKind['as'], text: string): unknown => {
  const found = readValue({ as } as CellKind, text);
  return found.ok ? found.value : found.error.code;
};
const across: CellKind = {
  as: 'word',
  options: [
    ['vertical-joints', 'level, over upright joints'],
    ['horizontal-joints', 'upright, over level joints'],
  ],
};

const word = (text: string) => readValue(across, text);
const units = (as: CellKind['as'], text: string) => [
  withUnit({ as } as CellKind, text, 'us'),
  withUnit({ as } as CellKind, text, 'metric'),
];
const typed = (as: 'lengths' | 'points', text: string) => withUnit({ as }, text, 'us');

describe('a cell of a rule table', () => {
  test('reads lengths, weights and pressures by their units and whole numbers without', () => {
    expect(read('length', `4'-2"`)).toBe(50 * inchNm);
    expect(read('weight', '1250 lb')).toBe(566_990);
    expect(read('pressure', '60 kPa')).toBe(60_000);
    expect([read('whole', '3'), read('decimal', '52,5')]).toEqual([3, 52.5]);
    expect([read('money', '17.5'), read('money', '640'), read('money', '0,05')]).toEqual([1750, 64000, 5]);
  });

  test('is undefined where it is empty, which is not zero', () => {
    expect([read('length', ' '), read('whole', ''), read('whole', '0')]).toEqual([undefined, undefined, 0]);
  });

  test('refuses what is neither, with a code of its own', () => {
    expect(read('length', '3 feets')).toBe('length-unreadable');
    expect([read('whole', '2.5'), read('whole', '-1'), read('decimal', 'steep')]).toEqual(
      Array(3).fill('cell-unreadable'),
    );
  });

  test('a word is known by its beginning, as the file writes it, and not where two begin so', () => {
    expect(word('upr')).toEqual({ ok: true, value: 'horizontal-joints' });
    expect(word('vertical-joints')).toEqual({ ok: true, value: 'vertical-joints' });
    expect([word('sideways').ok, word('').ok]).toEqual([false, true]);
  });

  test('lengths and places of holes are lists parted by semicolons', () => {
    expect(read('lengths', '6 in; 4 ft')).toEqual([6 * inchNm, 4 * footNm]);
    expect(read('points', '18 in x 24 in; 18 in × 6 ft')).toEqual([
      [18 * inchNm, 2 * footNm],
      [18 * inchNm, 6 * footNm],
    ]);
    expect(read('points', '18 in')).toBe('cell-unreadable');
  });

  test.each([
    [{ as: 'length' }, 7.5 * inchNm],
    [{ as: 'lengths' }, [6 * inchNm, 4 * footNm]],
    [{ as: 'points' }, [[18 * inchNm, 2 * footNm]]],
    [{ as: 'yes-no' }, false],
    [{ as: 'pressure' }, 60_000],
    [across, 'horizontal-joints'],
  ] as const)('what is printed of %j is read back as the same', (kind, value) => {
    const metric = readValue(kind, printValue(kind, value, 'metric'));
    expect(metric).toEqual({ ok: true, value });
  });
});

describe('a number without a unit', () => {
  test('takes the unit of its column: inches and pounds, or millimetres and kilograms', () => {
    expect(units('length', '36')).toEqual(['36 in', '36 mm']);
    expect(units('length', '6 1/2')).toEqual(['6 1/2 in', '6 1/2 mm']);
    expect(units('weight', '5')).toEqual(['5 lb', '5 kg']);
    expect(units('pressure', '1200')).toEqual(['1200 psf', '1200 kPa']);
    expect(units('whole', '36')).toEqual(['36', '36']);
  });

  test('each of a list by itself; what has its unit is left', () => {
    expect(read('lengths', typed('lengths', '6; 4 ft; 90'))).toEqual([6 * inchNm, 4 * footNm, 90 * inchNm]);
    expect(read('points', typed('points', '18 x 24; 450 mm x 6 ft'))).toEqual([
      [18 * inchNm, 2 * footNm],
      [450 * millimetreNm, 6 * footNm],
    ]);
  });
});
