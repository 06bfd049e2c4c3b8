// Lengths as people type them, in every spelling. Values with a source of their own stand in published.test.ts; these
// are exact by the definition of the inch (25.4 mm).
import { assert, integer, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatLength, formatLengthMetric, formatLengthUs, parseLength } from '../../core/units/length.ts';

function nm(text: string | number): number {
  const read = parseLength(text);
  if (!read.ok) throw new Error(`${text} was refused: ${read.error.message}`);
  return read.value;
}

describe('reading a length', () => {
  const mm: ReadonlyArray<readonly [string | number, number]> = [
    // feet-inch notation, from memory of drawing practice
    [`12'-6 1/2"`, 3822.7],
    [`12' 6.5"`, 3822.7],
    [`0'-9"`, 228.6],
    [`9"`, 228.6],
    [`24'`, 7315.2],
    [`8'-0"`, 2438.4],
    [`3/4"`, 19.05],
    [`1'-11 15/16"`, 608.0125],
    // spellings of the trade notes
    [`12'-6"`, 3810],
    [`12' 6"`, 3810],
    [`12'6`, 3810],
    [`3' 0 1/2"`, 927.1],
    [`3'-0½"`, 927.1],
    [`3'-0 5/8"`, 930.275],
    [`12’-6”`, 3810],
    [`12′-6″`, 3810],
    [`12′6″`, 3810],
    [`12'6''`, 3810],
    [`12'-6""`, 3810],
    [`12' – 6"`, 3810],
    [`3'-0-1/2"`, 927.1],
    [`3'-½"`, 927.1],
    [`6⅝"`, 168.275],
    [`6 1⁄2 in`, 165.1],
    [`18 in`, 457.2],
    [`18in.`, 457.2],
    [`2 ft`, 609.6],
    [`2 FT 6 IN`, 762],
    [`2 1/2 ft`, 762],
    [`2.7 m`, 2700],
    [`2,4 m`, 2400],
    [`2.40m`, 2400],
    [`240cm`, 2400],
    [`2400 mm`, 2400],
    [`1250 mm`, 1250],
    [`1,25 m`, 1250],
    [`1.250 m`, 1250],
    [`.5 m`, 500],
    [`-2'-6"`, -762],
    [` 2.7  m `, 2700],
    [2700, 2700],
    [3822.7, 3822.7],
    [0.1, 0.1],
    [-1.5, -1.5],
    [0, 0],
  ];
  test.each(mm)('%s is %d mm', (text, expected) => {
    expect(nm(text)).toBe(Math.round(expected * 1_000_000));
  });

  const refused: ReadonlyArray<readonly [string | number, string]> = [
    ['2400', 'length-without-unit'],
    ['2.4', 'length-without-unit'],
    ['2,4', 'length-without-unit'],
    ['6 1/2', 'length-without-unit'],
    ['1,250 mm', 'length-ambiguous'],
    ['1,250', 'length-ambiguous'],
    [`1,250'`, 'length-ambiguous'],
    ['1,250,000 mm', 'length-ambiguous'],
    ['0,500 m', 'length-ambiguous'],
    ['12-6', 'length-ambiguous'],
    ['', 'length-unreadable'],
    ['wide', 'length-unreadable'],
    ['8x3', 'length-unreadable'],
    ['3 yards', 'length-unreadable'],
    ['2.7 kg', 'length-unreadable'],
    [`12"-6'`, 'length-unreadable'],
    [`12.5'-6"`, 'length-unreadable'],
    [`3'-11/2"`, 'length-unreadable'],
    ['1/0 in', 'length-unreadable'],
    [`~12'-6"`, 'length-unreadable'],
    ['9'.repeat(400), 'length-unreadable'],
    [Number.NaN, 'length-unreadable'],
    [1e300, 'length-out-of-range'],
    ['99999999999 m', 'length-out-of-range'],
  ];
  test.each(refused)('%s is refused as %s', (text, code) => {
    const read = parseLength(text);
    expect(read.ok ? read.value : read.error.code).toBe(code);
  });

  test('a length without a unit is refused with a hint that begins with Maybe', () => {
    const read = parseLength('2400');
    expect(read.ok ? '' : read.error.hint).toMatch(/^Maybe 2400 mm/);
  });

  test('what is not a whole nanometre is rounded once, halves away from zero', () => {
    expect(nm('0.0000005 mm')).toBe(1);
    expect(nm('-0.0000005 mm')).toBe(-1);
    expect(nm('0.00000049 mm')).toBe(0);
    expect(nm('1/3 in')).toBe(8_466_667);
    // 1 ft and a third of an inch: 304 800 000 + 8 466 666.67
    expect(nm(`1'-0 1/3"`)).toBe(313_266_667);
  });
});

describe('printing a length', () => {
  const us: ReadonlyArray<readonly [number, string]> = [
    [3_822_700_000, `12'-6 1/2"`],
    [2_438_400_000, `8'-0"`],
    [228_600_000, `9"`],
    [19_050_000, `3/4"`],
    [396_875, `1/64"`],
    [927_100_000, `3'-0 1/2"`],
    [608_012_500, `1'-11 15/16"`],
    [0, `0"`],
    [100, `~0"`],
    [-762_000_000, `-2'-6"`],
    // one nanometre under 12 ft is never 11'-12"
    [3_657_599_999, `~12'-0"`],
    [2_700_000_000, `~8'-10 19/64"`],
  ];
  test.each(us)('%d nm prints as %s', (lengthNm, text) => {
    expect(formatLengthUs(lengthNm)).toBe(text);
  });

  test('millimetres print without trailing zeros', () => {
    expect([3_822_700_000, 2_700_000_000, 1, -1_500_000, 0].map(formatLengthMetric)).toEqual([
      '3822.7 mm',
      '2700 mm',
      '0.000001 mm',
      '-1.5 mm',
      '0 mm',
    ]);
  });
});

describe('a length survives printing and reading', () => {
  const any = integer({ min: -9_000_000_000_000_000, max: 9_000_000_000_000_000 });

  test('in millimetres, every whole nanometre', () => {
    assert(property(any, (lengthNm) => nm(formatLength(lengthNm, 'metric')) === lengthNm));
  });

  test('in feet and inches, every multiple of 1/64 in', () => {
    assert(
      property(integer({ min: -20_000_000_000, max: 20_000_000_000 }), (count) => {
        const lengthNm = count * 396_875;
        return nm(formatLength(lengthNm, 'us')) === lengthNm;
      }),
    );
  });

  test('in feet and inches, any other length prints the nearest 1/64 in with a leading ~', () => {
    assert(
      property(any, (lengthNm) => {
        const text = formatLength(lengthNm, 'us');
        const shown = nm(text.replace('~', ''));
        expect(Math.abs(shown - lengthNm)).toBeLessThanOrEqual(396_875 / 2);
        expect(text.startsWith('~')).toBe(shown !== lengthNm);
      }),
    );
  });

  test('as a JSON number of millimetres, to the nanometre', () => {
    const within = integer({ min: -1_000_000_000_000, max: 1_000_000_000_000 });
    assert(property(within, (lengthNm) => nm(lengthNm / 1_000_000) === lengthNm));
  });
});
