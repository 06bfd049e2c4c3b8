// Scales of drawings. 1 ft is 12 in by definition, so 3/8 in for a foot is 1:32.
import { expect, test } from 'vitest';
import { paperScale } from '../../core/sheets/paper.ts';

const footNm = 304_800_000;
const box = { widthMm: 158, heightMm: 130 };

function scaleOf(feetWide: number, feetHigh: number, units: 'us' | 'metric' = 'us') {
  return paperScale({ widthNm: feetWide * footNm, heightNm: feetHigh * footNm }, box, units);
}

test('every scale in feet says how much of an inch its foot is', () => {
  const seen = new Set<number>();
  for (let feet = 1; feet < 200; feet += 1) {
    const { ratio, words } = scaleOf(feet, 1);
    const [, whole = '0', over = '0', under = '1'] =
      /, (?:(\d+)(?: |(?= in)))?(?:(\d+)\/(\d+))? ?in is 1 ft$/u.exec(words) ?? [];
    expect(12 / (Number(whole) + Number(over) / Number(under)), words).toBe(ratio);
    seen.add(ratio);
  }
  expect(seen.size).toBeGreaterThan(8);
});

test('the largest scale at which both width and height fit is taken', () => {
  // 12 ft = 3657.6 mm: 152.4 mm at 1:24, 114.3 mm at 1:32.
  expect(scaleOf(12, 10).ratio).toBe(24);
  expect(scaleOf(12, 12).ratio).toBe(32);
  expect(scaleOf(12, 12, 'metric').ratio).toBe(30);
});

test('a thing too large for every usual scale still fits', () => {
  const { ratio } = scaleOf(3000, 10);
  expect((3000 * 304.8) / ratio).toBeLessThanOrEqual(158);
});
