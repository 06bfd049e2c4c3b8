// Where the effort ends before the proof: what was found is whole and good, and nothing is claimed of it.
import { describe, expect, test } from 'vitest';
import { compareFillings, fillable, fillRows } from '../../core/face/fill-rows.ts';
import { fullEffort, type RowsRequest, widthOf } from '../../core/face/rows.ts';
import { numbersFrom } from './random-faces.ts';

function wall(codes: number, lengthNm: number, rows: number): RowsRequest {
  const number = numbersFrom(codes);
  const widthsNm = Array.from({ length: codes }, () => 300_000_001 + number(900_000_000));
  const stock = widthsNm.map(() => 2);
  return { lengthNm, rows, widthsNm, stock, maximumFillerNm: 50_000_000, best: 50 };
}

describe('widths in nanometres that have no common measure', () => {
  const cases: readonly (readonly [codes: number, lengthNm: number, rows: number])[] = [
    [12, 18_288_000_000, 1],
    [12, 18_288_000_000, 2],
    [200, 60_000_000_001, 1],
  ];
  for (const [codes, lengthNm, rows] of cases)
    test(
      `${codes} of them in ${rows} rows of ${lengthNm} nm: filled, and not proven`,
      { timeout: 30_000 },
      () => {
        const request = wall(codes, lengthNm, rows);
        const { fillings, proven } = fillRows(request);
        expect(proven).toBe(false);
        expect(fillings.length).toBeGreaterThan(0);
        for (const [place, filling] of fillings.entries()) {
          for (const row of filling.rows) {
            const leftNm = lengthNm - widthOf(request.widthsNm, row);
            expect(leftNm).toBeGreaterThanOrEqual(0);
            expect(leftNm).toBeLessThanOrEqual(request.maximumFillerNm);
          }
          if (place > 0) expect(compareFillings(fillings[place - 1]!, filling)).toBeLessThan(0);
        }
      },
    );

  test('12 of them in a row of 6 m: few enough ways that the best is proven', () => {
    expect(fillRows(wall(12, 6_000_000_001, 1)).proven).toBe(true);
  });

  test('the same question has the same answer', () => {
    const request = wall(12, 18_288_000_000, 1);
    expect(fillRows(request)).toEqual(fillRows(request));
  });
});

test('with a tenth, a thousandth, a millionth of the effort a proven best is still the best, an unproven one never better', () => {
  const request = { ...wall(6, 6_000_000_000, 2), best: 3 };
  const [best] = fillRows(request).fillings;
  expect(best).toBeDefined();
  let proven = 0;
  for (const part of [1, 10, 1000, 1_000_000]) {
    const effort = {
      remainders: Math.ceil(fullEffort.remainders / part),
      splits: Math.ceil(fullEffort.splits / part),
      shares: Math.ceil(fullEffort.shares / part),
    };
    const found = fillRows(request, effort);
    const [first] = found.fillings;
    if (found.proven) expect(first).toEqual(best);
    else if (first !== undefined && best !== undefined)
      expect(compareFillings(best, first)).toBeLessThanOrEqual(0);
    if (found.proven) proven += 1;
  }
  expect(proven).toBeGreaterThan(0);
  expect(proven).toBeLessThan(4);
});

test('more panels than are added up are not fillable', () => {
  const request = { ...wall(2, 1_000_000_000, 1), widthsNm: [50_000, 1_000_000] };
  expect(fillable(request)).toBe(true);
  expect(fillable({ ...request, rows: 2 })).toBe(false);
});
