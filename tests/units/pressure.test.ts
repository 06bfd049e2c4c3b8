// Pressures. 1 psf is 47.88026 Pa: NIST Special Publication 811 (2008), appendix B.8, pound-force per square foot.
import { describe, expect, test } from 'vitest';
import { formatPressure, parsePressure, pressureFromKpa } from '../../core/units/pressure.ts';

function pascals(text: string): number | string {
  const read = parsePressure(text);
  return read.ok ? read.value : read.error.code;
}

describe('pressures', () => {
  test.each([
    ['1 psf', 48],
    ['100000 psf', 4_788_026],
    ['1250 psf', 59_850],
    ['1,5 kPa', 1500],
    ['60 kPa', 60_000],
    ['60 kN/m2', 60_000],
    ['60 kN/m²', 60_000],
    ['59850 Pa', 59_850],
    ['60', 'pressure-without-unit'],
    ['1,250 psf', 'pressure-ambiguous'],
    ['60 ft', 'pressure-unreadable'],
    ['-60 kPa', 'pressure-unreadable'],
    ['strong', 'pressure-unreadable'],
    ['99999999999999999 kPa', 'pressure-out-of-range'],
  ])('%s gives %s', (text, expected) => {
    expect(pascals(text)).toBe(expected);
  });

  test('59 850 Pa print as 1,250 psf and 59.9 kPa', () => {
    expect(formatPressure(59_850, 'us')).toBe('1,250 psf');
    expect(formatPressure(59_850, 'metric')).toBe('59.9 kPa');
    expect(formatPressure(60_000, 'metric')).toBe('60 kPa');
  });

  test('kilopascals as a number are exact; zero, less and no number are refused', () => {
    expect(pressureFromKpa(0.1 + 0.2)).toEqual({ ok: true, value: 300 });
    expect(pressureFromKpa(59.8505)).toEqual({ ok: true, value: 59_851 });
    for (const kpa of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(pressureFromKpa(kpa)).toMatchObject({ ok: false, error: { code: 'pressure-not-positive' } });
    expect(pressureFromKpa(1e20)).toMatchObject({ ok: false, error: { code: 'pressure-out-of-range' } });
  });
});
