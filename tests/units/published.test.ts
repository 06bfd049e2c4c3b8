// Units held against sources outside this project: each row names its own. What is exact by definition is compared
// exactly, what the program keeps in whole grams or nanometres to that unit.
import { describe, expect, test } from 'vitest';
import { areaM2, rectangleNm2 } from '../../core/units/area.ts';
import { formatLengthUs, parseLength } from '../../core/units/length.ts';
import { parseWeight } from '../../core/units/weight.ts';

const appendix =
  'SI conversion appendix of a US Navy design manual, http://navalfacilities.tpub.com/1004_6/1004_60046.htm';
const tables = 'conversion table, http://brassmein.com/tech/tech003.htm';
const drawings = 'feet-inch-fraction notation of US drawings: from memory, not confirmed';

function nm(text: string): number {
  const read = parseLength(text);
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}

function grams(text: string): number {
  const read = parseWeight(text);
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}

describe('lengths', () => {
  test.each([
    ['UNIT-01', '1 ft', 304.8, appendix],
    ['UNIT-02', '1 in', 25.4, appendix],
    ['UNIT-15', '7 ft', 2133.6, appendix],
    ['UNIT-16', '14 ft', 4267.2, appendix],
    ['FTIN-01', `12'-6 1/2"`, 3822.7, drawings],
    ['FTIN-02', `12' 6.5"`, 3822.7, drawings],
    ['FTIN-03', `0'-9"`, 228.6, drawings],
    ['FTIN-04', `9"`, 228.6, drawings],
    ['FTIN-05', `24'`, 7315.2, drawings],
    ['FTIN-06', `8'-0"`, 2438.4, drawings],
    ['FTIN-07', `3/4"`, 19.05, drawings],
    ['FTIN-08', `1'-11 15/16"`, 608.0125, drawings],
  ])('%s: %s is %d mm (%s)', (_, text, mm) => {
    expect(nm(text)).toBe(Math.round(mm * 1_000_000));
  });

  // The rows round to 1/16 in; this program prints 1/64 in, so what is 0.5 mm over or 0.6 mm under shows.
  test.each([
    ['FTIN-09', 3823.2, `~12'-6 33/64"`, `12'-6 1/2"`, 0.5, drawings],
    ['FTIN-10', 3657, `~11'-11 31/32"`, `12'-0"`, -0.6, drawings],
  ])('%s: %d mm prints as %s, and its row %s is read as %d mm less (%s)', (_, mm, printed, row, residual) => {
    expect(formatLengthUs(mm * 1_000_000)).toBe(printed);
    expect(mm * 1_000_000 - nm(row)).toBe(residual * 1_000_000);
    const shown = nm(printed.slice(1));
    expect(Math.abs(mm * 1_000_000 - shown)).toBeLessThanOrEqual(25_400_000 / 128);
  });

  test(`FTIN-10: 1/128 in under 12 ft carries to 12'-0" and never prints 11'-12" (${drawings})`, () => {
    expect(formatLengthUs(nm(`12'-0"`) - 198_437)).toBe(`~12'-0"`);
    expect(formatLengthUs(nm(`11'-11 127/128"`))).toBe(`~12'-0"`);
  });
});

describe('weights and areas', () => {
  test(`UNIT-03: 1 lb is 0.45359237 kg, so 100 000 lb are 45 359 237 g (${tables})`, () => {
    expect(grams('100000 lb')).toBe(45_359_237);
    expect(grams('1 lb')).toBe(454);
  });

  test(`UNIT-11: a short ton of 2000 lb is 907.18474 kg (${appendix})`, () => {
    expect(grams('2000 lb')).toBe(907_185);
    expect(grams('200000 lb')).toBe(90_718_474);
  });

  test(`UNIT-09: a square foot is 0.09290304 m2 (${tables})`, () => {
    expect(areaM2(rectangleNm2(nm('1 ft'), nm('1 ft')))).toBe(0.092_903_04);
  });
});
