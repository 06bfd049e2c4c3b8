// What holds for every filling, whatever is asked.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareFillings, fillRows } from '../../core/face/fill-rows.ts';
import { nearestLengths } from '../../core/face/nearest.ts';
import { type RowsRequest, widthOf } from '../../core/face/rows.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 4711);
const settings = { seed, numRuns: 300 };

const requests = fc
  .record({
    widthsNm: fc.array(fc.integer({ min: 2, max: 40 }), { maxLength: 6 }),
    lengthNm: fc.integer({ min: 1, max: 300 }),
    rows: fc.integer({ min: 1, max: 4 }),
    maximumFillerNm: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 30 })),
    best: fc.integer({ min: 1, max: 8 }),
    unit: fc.constantFrom(1, 25_400_000, 999_983),
    stock: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 6, maxLength: 6 }),
  })
  .map(({ unit, widthsNm, lengthNm, maximumFillerNm, stock, ...rest }): RowsRequest => ({
    ...rest,
    widthsNm: widthsNm.map((width) => width * unit),
    lengthNm: lengthNm * unit,
    maximumFillerNm: maximumFillerNm * unit,
    stock: stock.slice(0, widthsNm.length),
  }));

describe(`with seed ${seed}`, () => {
  test('panels and filler are exactly the length of every row, the filler from nothing to its maximum', () => {
    fc.assert(
      fc.property(requests, (request) => {
        for (const filling of fillRows(request).fillings) {
          const fillers = filling.rows.map((row) => request.lengthNm - widthOf(request.widthsNm, row));
          expect(filling.rows.length).toBe(request.rows);
          for (const fillerNm of fillers) {
            expect(fillerNm).toBeGreaterThanOrEqual(0);
            expect(fillerNm).toBeLessThanOrEqual(request.maximumFillerNm);
          }
          expect(filling.fillerNm).toBe(fillers.reduce((sum, fillerNm) => sum + fillerNm, 0));
          const sums = request.widthsNm.map((_, code) =>
            filling.rows.reduce((sum, row) => sum + row[code]!, 0),
          );
          expect(filling.counts).toEqual(sums);
        }
      }),
      settings,
    );
  });

  test('fillings are distinct by their counts, no more than asked for, each before the next', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const { fillings } = fillRows(request);
        expect(fillings.length).toBeLessThanOrEqual(request.best);
        expect(new Set(fillings.map(({ counts }) => counts.join())).size).toBe(fillings.length);
        for (const [place, filling] of fillings.entries())
          if (place > 0) expect(compareFillings(fillings[place - 1]!, filling)).toBeLessThan(0);
      }),
      settings,
    );
  });

  test('more in stock, or more filler allowed, never makes the proven best worse', () => {
    let [compared, unproven] = [0, 0];
    fc.assert(
      fc.property(requests, fc.nat(5), fc.nat(10), (request, code, more) => {
        const [first] = fillRows(request).fillings;
        if (first === undefined) return;
        const stock = request.stock?.map((count, at) => (at === code ? count + more : count)) ?? [];
        const maximumFillerNm = request.maximumFillerNm + more * 1_000_000;
        for (const looser of [fillRows({ ...request, stock }), fillRows({ ...request, maximumFillerNm })]) {
          const [best] = looser.fillings;
          expect(best).toBeDefined();
          compared += 1;
          if (!looser.proven) unproven += 1;
          else expect(best && compareFillings(best, first)).toBeLessThanOrEqual(0);
        }
      }),
      settings,
    );
    expect(compared).toBeGreaterThan(100);
    expect(unproven).toBeLessThan(compared / 50);
  });

  test('the nearest lengths are those that can be filled without a filler, and none between them', () => {
    fc.assert(
      fc.property(requests, ({ widthsNm, lengthNm }) => {
        const unit = lengthNm < 1000 ? 1 : lengthNm % 25_400_000 === 0 ? 25_400_000 : 999_983;
        const fills = (asked: number): boolean =>
          asked === 0 ||
          fillRows({ lengthNm: asked, rows: 1, widthsNm, maximumFillerNm: 0, best: 1 }).fillings.length > 0;
        const found = nearestLengths(lengthNm, widthsNm, 1_000_000);
        expect(found).toBeDefined();
        if (found === undefined) return;
        expect(fills(found.belowNm)).toBe(true);
        for (let at = found.belowNm + unit; at <= lengthNm; at += unit) expect(fills(at)).toBe(false);
        if (found.aboveNm === undefined) expect(widthsNm).toEqual([]);
        else {
          expect(fills(found.aboveNm)).toBe(true);
          for (let at = lengthNm + unit; at < found.aboveNm; at += unit) expect(fills(at)).toBe(false);
        }
      }),
      { ...settings, numRuns: 100 },
    );
  });
});
