// Weights, money, areas and hours. 1 lb = 0.45359237 kg and 1 ft = 0.3048 m are exact by definition.
import { describe, expect, test } from 'vitest';
import { areaM2, formatArea, rectangleNm2 } from '../../core/units/area.ts';
import { ceilDivide, decimalRatio, ratioNumber, roundHalfAway } from '../../core/units/exact.ts';
import { formatHours, formatMinutes } from '../../core/units/hours.ts';
import { formatMoney } from '../../core/units/money.ts';
import { formatWeight, parseWeight } from '../../core/units/weight.ts';

function grams(text: string | number): number | string {
  const read = parseWeight(text);
  return read.ok ? read.value : read.error.code;
}

describe('weights', () => {
  test.each([
    ['200 lb', 90_718],
    ['1300 lbs', 589_670],
    ['90.5 kg', 90_500],
    ['90,5 kg', 90_500],
    ['1.2 t', 1_200_000],
    ['450 g', 450],
    [90.5, 90_500],
    [0.0005, 1],
    [0.0004999, 0],
    [1.0005, 1001],
    ['0 kg', 0],
    ['90', 'weight-without-unit'],
    ['1,300 lb', 'weight-ambiguous'],
    ['90 ft', 'weight-unreadable'],
    ['heavy', 'weight-unreadable'],
    ['-5 kg', 'weight-negative'],
    [-5, 'weight-negative'],
    [Number.POSITIVE_INFINITY, 'weight-unreadable'],
    [1e20, 'weight-out-of-range'],
  ])('%s gives %s', (text, expected) => {
    expect(grams(text)).toBe(expected);
  });

  test('735 273 g prints as 1,621 lb and 735.3 kg', () => {
    expect(formatWeight(735_273, 'us')).toBe('1,621 lb');
    expect(formatWeight(735_273, 'metric')).toBe('735.3 kg');
    expect(formatWeight(2268, 'us')).toBe('5 lb');
  });
});

describe('money', () => {
  test('prints the same on every machine', () => {
    expect(formatMoney(123_456, 'USD')).toBe('$1,234.56');
    expect(formatMoney(-5, 'EUR')).toBe('-€0.05');
    expect(formatMoney(100_000_000, 'CHF')).toBe('CHF 1,000,000.00');
    expect(formatMoney(1234, 'JPY')).toBe('JPY 1,234');
  });
});

describe('areas and hours', () => {
  test('12 ft by 12 ft is 144 sq ft and 13.37803776 m2', () => {
    const area = rectangleNm2(3_657_600_000, 3_657_600_000);
    expect(formatArea(area, 'us')).toBe('144 sq ft');
    expect(areaM2(area)).toBe(13.378_037_76);
    expect(formatArea(area, 'metric')).toBe('13.4 m²');
  });

  test('7.5 hours print as 7 h 30 min', () => {
    expect([formatHours(7.5), formatHours(8), formatMinutes(45), formatMinutes(-90)]).toEqual([
      '7 h 30 min',
      '8 h',
      '45 min',
      '-1 h 30 min',
    ]);
  });
});

describe('exact fractions', () => {
  test('a decimal is read exactly, also with an exponent', () => {
    expect(decimalRatio('1e-7')).toEqual({ over: 1n, under: 10_000_000n });
    expect(decimalRatio('2.5e3')).toEqual({ over: 2500n, under: 1n });
    expect(decimalRatio('1.2.3')).toBeUndefined();
  });

  test('halves round away from zero and quotients round up', () => {
    expect([roundHalfAway(5n, 2n), roundHalfAway(-5n, 2n), roundHalfAway(4n, 3n)]).toEqual([3n, -3n, 1n]);
    expect([ceilDivide(6n, 3n), ceilDivide(7n, 3n), ceilDivide(-7n, 3n)]).toEqual([2n, 3n, -2n]);
    expect([ratioNumber(1n, 8n), ratioNumber(-1n, 8n)]).toEqual([0.125, -0.125]);
  });
});
