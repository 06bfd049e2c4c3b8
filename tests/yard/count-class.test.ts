// Tolerances, yearly counts and the rule of not netting: http://supplychainmetric.com/inventory-accuracy.html. The
// shares of 80, 15 and 5 % by value: common practice, no source.
import { describe, expect, test } from 'vitest';
import { classify, countsAYear, isWithin, nextDue } from '../../core/yard/count-class.ts';
import { recordAccuracy } from '../../core/yard/record-accuracy.ts';

const worth = (
  component: string,
  held: number,
  valueCents: number | null,
  hirePerDayCents: number | null = null,
) => ({
  component,
  held,
  valueCents,
  hirePerDayCents,
});

describe('count classes', () => {
  test('80 % of the value is A, the next 15 % B, the last 5 % C', () => {
    const parts = [worth('P', 1, 8000), worth('Q', 1, 1500), worth('R', 1, 500)];
    expect(classify(parts, {}).map((each) => each.class)).toEqual(['A', 'B', 'C']);
    expect(classify(parts, {}).map((each) => each.sharePercent)).toEqual([80, 15, 5]);
  });

  test('what is held counts, not what one piece costs: 400 locks at 20 are more than 2 frames at 900', () => {
    const [locks, frames] = classify([worth('LK', 400, 2000), worth('FR', 2, 90_000)], {});
    expect([locks?.class, frames?.class]).toEqual(['A', 'B']);
  });

  test('the one that crosses a share is in the higher class: 79 % and 10 % are both A', () => {
    const parts = [worth('P', 1, 79), worth('Q', 1, 10), worth('R', 1, 7), worth('S', 1, 4)];
    expect(classify(parts, {}).map((each) => each.class)).toEqual(['A', 'A', 'B', 'C']);
  });

  test('without values they are ranked by hire per day among themselves, and never mixed with values', () => {
    const parts = [
      worth('P', 10, 100),
      worth('H', 1, null, 5),
      worth('X', 100, null, null),
      worth('N', 0, 500),
    ];
    expect(classify(parts, {})).toMatchObject([
      { class: 'A', by: 'value', worthCents: 1000, sharePercent: 100 },
      { class: 'A', by: 'hire', worthCents: 5, sharePercent: 100 },
      { class: 'C', by: 'nothing', worthCents: null, sharePercent: null },
      { class: 'C', by: 'none-held', worthCents: 0, sharePercent: null },
    ]);
  });

  test('a class set by hand stands: corners with a long lead time are A', () => {
    expect(classify([worth('P', 1, 9000), worth('IC8', 4, 10)], { IC8: 'A' })[1]).toMatchObject({
      class: 'A',
      by: 'hand',
    });
  });

  test('the order of the list changes nothing, and equal worths go by code', () => {
    const parts = [worth('B', 1, 50), worth('A', 1, 50)];
    const ranks = (list: typeof parts) =>
      Object.fromEntries(classify(list, {}).map((each) => [each.component, each.class]));
    expect(ranks(parts)).toEqual(ranks([...parts].reverse()));
  });
});

describe('tolerances', () => {
  test.each([
    ['A', 99, true],
    ['A', 98, false],
    ['B', 97, true],
    ['B', 96, false],
    ['C', 95, true],
    ['C', 105, true],
    ['C', 94, false],
  ] as const)('class %s: 100 booked and %i counted is right: %s', (place, counted, right) => {
    expect(isWithin(100, counted, place)).toBe(right);
  });

  test('where nothing is booked, nothing may be found', () => {
    expect(isWithin(0, 0, 'C')).toBe(true);
    expect(isWithin(0, 1, 'C')).toBe(false);
  });
});

describe('record accuracy', () => {
  test('never netted: 100 counted 95 and 100 counted 105 in class A are two wrong records, 0 % and not 100 %', () => {
    const lines = [95, 105].map((counted) => ({ within: isWithin(100, counted, 'A') }));
    expect(recordAccuracy(lines)).toEqual({ records: 2, within: 0, percent: 0 });
  });

  test('of nothing counted there is none', () => {
    expect(recordAccuracy([])).toEqual({ records: 0, within: 0, percent: null });
  });
});

describe('when a class is due', () => {
  test('A is counted 4 times a year, B twice, C once', () => {
    expect(countsAYear).toEqual({ A: 4, B: 2, C: 1 });
  });

  test('3, 6 and 12 months after 30 November 2025; never counted is due at once', () => {
    const due = (['A', 'B', 'C'] as const).map((place) => nextDue(place, '2025-11-30'));
    expect(due).toEqual(['2026-02-28', '2026-05-30', '2026-11-30']);
    expect(nextDue('A', null)).toBeNull();
  });
});
