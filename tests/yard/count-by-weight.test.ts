// Counting by weight: the true count is always among those that are possible, whatever the scale, the tare and the
// pieces are off by within their tolerances.
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { countByWeight } from '../../core/yard/count-by-weight.ts';

const locks = {
  tareGrams: 13_600,
  tareToleranceGrams: 0,
  pieceGrams: 2268,
  pieceToleranceGrams: 0,
  scaleStepGrams: 0,
};

test('40 locks of 5 lb in a bucket of 30 lb, weighed to the gram: 40 and nothing else', () => {
  expect(countByWeight({ ...locks, grossGrams: 13_600 + 40 * 2268 })).toEqual({
    ok: true,
    value: { quantity: 40, least: 40, most: 40 },
  });
});

test('with a scale of 1 kg steps and pieces off by 50 g: 40, and 39 is possible', () => {
  const counted = countByWeight({
    ...locks,
    grossGrams: 104_000,
    pieceToleranceGrams: 50,
    scaleStepGrams: 1000,
  });
  // (104,000 - 13,600 - 500) / 2,318 = 38.8; (104,000 - 13,600 + 500) / 2,218 = 40.98; 90,400 / 2,268 = 39.9.
  expect(counted).toEqual({ ok: true, value: { quantity: 40, least: 39, most: 40 } });
});

test.each([
  ['lighter than it is empty', { grossGrams: 13_000 }, 'gross-below-tare'],
  ['between two counts', { grossGrams: 13_600 + 40 * 2268 + 1000 }, 'no-whole-number'],
  ['pieces without a weight', { grossGrams: 20_000, pieceGrams: 0 }, 'no-piece-weight'],
  ['pieces that may weigh nothing', { grossGrams: 20_000, pieceToleranceGrams: 2268 }, 'tolerance-too-great'],
])('%s is refused', (_, more, code) => {
  expect(countByWeight({ ...locks, ...more })).toMatchObject({ ok: false, error: { code } });
});

test('empty within the step of the scale is none', () => {
  expect(countByWeight({ ...locks, grossGrams: 13_500, scaleStepGrams: 1000 })).toEqual({
    ok: true,
    value: { quantity: 0, least: 0, most: 0 },
  });
});

test('the true count lies within least and most, and the answer too', () => {
  let wide = 0;
  fc.assert(
    fc.property(
      fc.record({
        pieces: fc.integer({ min: 0, max: 500 }),
        pieceGrams: fc.integer({ min: 20, max: 40_000 }),
        tolerancePercent: fc.integer({ min: 0, max: 20 }),
        tareGrams: fc.integer({ min: 0, max: 200_000 }),
        tareToleranceGrams: fc.integer({ min: 0, max: 2000 }),
        scaleStepGrams: fc.integer({ min: 1, max: 5000 }),
        // Where within its tolerance each true figure lies, in thousandths from -1000 to 1000.
        pieceOff: fc.integer({ min: -1000, max: 1000 }),
        tareOff: fc.integer({ min: -1000, max: 1000 }),
      }),
      ({
        pieces,
        pieceGrams,
        tolerancePercent,
        tareGrams,
        tareToleranceGrams,
        scaleStepGrams,
        pieceOff,
        tareOff,
      }) => {
        const pieceToleranceGrams = Math.floor((pieceGrams * tolerancePercent) / 100);
        const truePiece = pieceGrams + (pieceToleranceGrams * pieceOff) / 1000;
        const trueTare = Math.max(0, tareGrams + (tareToleranceGrams * tareOff) / 1000);
        const trueGross = trueTare + pieces * truePiece;
        const grossGrams = Math.round(trueGross / scaleStepGrams) * scaleStepGrams;
        const counted = countByWeight({
          grossGrams,
          tareGrams,
          tareToleranceGrams,
          pieceGrams,
          pieceToleranceGrams,
          scaleStepGrams,
        });
        if (!counted.ok) throw new Error(counted.error.message);
        const { quantity, least, most } = counted.value;
        expect(least).toBeLessThanOrEqual(pieces);
        expect(most).toBeGreaterThanOrEqual(pieces);
        expect(quantity).toBeGreaterThanOrEqual(least);
        expect(quantity).toBeLessThanOrEqual(most);
        if (most > least) wide += 1;
      },
    ),
    { numRuns: 2000 },
  );
  expect(wide).toBeGreaterThan(100);
});
