// Bin packing sets with a known least number of bins, as rows of one height that share one stock: the sizes are
// the stock, a bin is a row, and room left in a bin is filler. Sources: data/README.md.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Filling, type RowsRequest, widthOf } from '../../core/face/rows.ts';
import { fillRows } from '../../core/face/fill-rows.ts';

interface PackingSet {
  readonly name: string;
  readonly capacity: number;
  readonly optimum: number;
  readonly firstFitDecreasing: number;
  readonly items: readonly number[];
}

const sets = JSON.parse(
  readFileSync(new URL('data/bin-packing.json', import.meta.url), 'utf8'),
) as readonly PackingSet[];

function asRows({ capacity, items }: PackingSet, rows: number): RowsRequest {
  const widthsNm = [...new Set(items)].sort((one, other) => other - one);
  const stock = widthsNm.map((width) => items.filter((item) => item === width).length);
  return { lengthNm: capacity, rows, widthsNm, stock, maximumFillerNm: capacity, best: 1 };
}

function sumOf(items: readonly number[]): number {
  return items.reduce((sum, item) => sum + item, 0);
}

function holds({ widthsNm, lengthNm, stock = [] }: RowsRequest, { rows, counts, shortage }: Filling): void {
  for (const row of rows) expect(widthOf(widthsNm, row)).toBeLessThanOrEqual(lengthNm);
  if (shortage === 0)
    for (const [code, count] of counts.entries()) expect(count).toBeLessThanOrEqual(stock[code]!);
}

describe('as many rows as the least number of bins', () => {
  const packed: PackingSet[] = [];
  for (const set of sets)
    test(`${set.name}: never a score better than all ${set.items.length} pieces, and that one where it is proven`, () => {
      const request = asRows(set, set.optimum);
      const { fillings, proven } = fillRows(request);
      const [first] = fillings;
      expect(first).toBeDefined();
      if (first === undefined) return;
      holds(request, first);
      // all of the stock and nothing beyond it: no filling has less filler without a shortage
      const all = [0, set.optimum * set.capacity - sumOf(set.items), set.items.length];
      const mine = [first.shortage, first.fillerNm, first.panelCount];
      if (proven) expect(mine).toEqual(all);
      else expect(first.fillerNm).toBeGreaterThanOrEqual(all[1]!);
      if (mine.join() === all.join()) packed.push(set);
    });

  test('most are packed into it, many of them where first-fit decreasing takes more', () => {
    const hard = packed.filter((set) => set.firstFitDecreasing > set.optimum);
    expect(sets.length).toBe(26);
    expect(packed.length).toBeGreaterThanOrEqual(18);
    expect(hard.length).toBeGreaterThanOrEqual(9);
  });
});

describe('one row fewer than the least number of bins', () => {
  const small = sets.filter(({ items }) => items.length <= 40);
  test('there are four sets of so few pieces that the proof ends', () => expect(small.length).toBe(4));
  for (const set of small)
    test(`${set.name}: no filling takes every piece and none beyond the stock`, () => {
      const request = asRows(set, set.optimum - 1);
      const [first] = fillRows(request).fillings;
      expect(first).toBeDefined();
      if (first === undefined) return;
      holds(request, first);
      expect(first.panelCount === set.items.length && first.shortage === 0).toBe(false);
    });
});

test('one row of a set is filled as full as its pieces can: the best of all its bins in any packing', () => {
  for (const set of sets) {
    const request = asRows(set, 1);
    const { fillings, proven } = fillRows(request);
    expect(proven).toBe(true);
    expect(fillings[0]?.shortage).toBe(0);
    // by marking every sum that some of the pieces have
    const sums = new Set([0]);
    for (const item of set.items)
      for (const sum of Array.from(sums)) if (sum + item <= set.capacity) sums.add(sum + item);
    expect(fillings[0]?.fillerNm).toBe(set.capacity - Math.max(...sums));
  }
});
