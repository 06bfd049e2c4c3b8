import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { componentRates, type RateFacts } from '../../core/yard/rates.ts';
import { spareOf } from '../../core/yard/spares.ts';
import type { CountResult } from '../../core/yard/stock-count.ts';
import type { TicketResult } from '../../core/yard/strip-ticket.ts';
import { firstYardSettings } from '../../core/yard/yard-settings.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_260_405);

type ResultLine = TicketResult['lines'][number];
const result = (part: string, line: Partial<ResultLine>): ResultLine => ({
  part,
  component: 'LK',
  expected: 0,
  ready: 0,
  readyHidden: 0,
  toClean: 0,
  toRepair: 0,
  quarantine: 0,
  scrapped: 0,
  missing: 0,
  found: 0,
  ...line,
});
const ticket = (...lines: readonly ResultLine[]): RateFacts['tickets'][number] => ({
  parts: [],
  result: { at: '2026-03-05T10:00:00-05:00', who: 'yard', lines: [...lines], missing: [] },
});
const count = (how: 'lost' | 'found', quantity: number): RateFacts['counts'][number] => {
  const line: CountResult['lines'][number] = {
    location: 'YARD',
    component: 'LK',
    owner: null,
    booked: 142,
    counted: 126,
    uncertainty: 0,
    countedAt: '2026-03-10T17:00:00-04:00',
    class: 'C',
    within: false,
    explained: [{ how, quantity, remark: null }],
    leftOpen: 0,
  };
  return { result: { at: line.countedAt, who: 'yard', lines: [line] } };
};

const components = [
  { code: 'LK', kind: 'lock' },
  { code: 'P836', kind: 'panel' },
  { code: 'R8', kind: 'stiffening-rail' },
];
const ratesOf = (facts: Partial<RateFacts>) =>
  componentRates({ tickets: [], counts: [], components, settings: firstYardSettings, ...facts });
const locksOf = (facts: Partial<RateFacts>) => ratesOf(facts).find(({ component }) => component === 'LK');

describe('a component without a record of its own', () => {
  test('has the default of its kind: 5 % for locks, one a set for panels, none for rails', () => {
    // Common practice, no source: connectors 5 to 10 %, rods 5 %, one panel of each common size per set.
    expect(ratesOf({}).map(({ component, used }) => [component, used])).toEqual([
      ['LK', { basis: 'default', millionths: 50_000 }],
      ['P836', { basis: 'default-per-set' }],
      ['R8', { basis: 'none' }],
    ]);
  });

  test('nine turns are not ten', () => {
    const nine = Array.from({ length: 9 }, (_, index) =>
      ticket(result(`P${index}`, { expected: 20, missing: 1 })),
    );
    expect(locksOf({ tickets: nine })).toMatchObject({
      turns: 9,
      pieces: 180,
      lost: 9,
      used: { basis: 'default' },
    });
    const ten = [...nine, ticket(result('P9', { expected: 20 }))];
    expect(locksOf({ tickets: ten })).toMatchObject({
      turns: 10,
      pieces: 200,
      used: { basis: 'own', worn: 9, of: 200 },
    });
  });
});

describe('what the tickets and counts say', () => {
  const settings = { ...firstYardSettings, turnsForOwnRate: 2 };

  test('a gang and the loose pieces of one ticket are a turn each; late finds take back what was missing', () => {
    const first = ticket(
      result('P01/A1', { expected: 26, missing: 4, toRepair: 1 }),
      result('loose', { expected: 10, missing: 2, scrapped: 1 }),
    );
    const late = ticket(result('late', { found: 3 }));
    // Taken to have come back, and looked at by nobody.
    const unseen = ticket(result('P02/A1', { expected: 26, toClean: 26, uncounted: true }));
    expect(locksOf({ tickets: [first, late, unseen], settings })).toEqual({
      component: 'LK',
      turns: 2,
      pieces: 36,
      lost: 3,
      damaged: 2,
      used: { basis: 'own', worn: 5, of: 36 },
    });
  });

  test('16 locks short, 4 of them lost for good: the count adds its 4, and what a count finds is taken back', () => {
    const facts = {
      tickets: [ticket(result('a', { expected: 100 }), result('b', { expected: 100 }))],
      settings,
    };
    expect(locksOf({ ...facts, counts: [count('lost', 4)] })?.used).toEqual({
      basis: 'own',
      worn: 4,
      of: 200,
    });
    expect(locksOf({ ...facts, counts: [count('lost', 4), count('found', 9)] })?.lost).toBe(0);
  });
});

describe('spares', () => {
  test('5 % of 434 locks are 21.7: 22; 5 % of 340 are 17 and not 18', () => {
    // 434 and 340 pieces: the greatest demand and the owned locks of the two-week case of the demo scenario.
    const five = { basis: 'default', millionths: 50_000 } as const;
    expect(spareOf(five, { pieces: 434, pours: 3 })).toBe(22);
    expect(spareOf(five, { pieces: 340, pours: 3 })).toBe(17);
    // In binary fractions 0.07 x 100 is a little over 7, and would be 8.
    expect(spareOf({ basis: 'default', millionths: 70_000 }, { pieces: 100, pours: 1 })).toBe(7);
  });

  test('panels without a record: one for each set that stands at once; without any rate none', () => {
    expect(spareOf({ basis: 'default-per-set' }, { pieces: 60, pours: 3 })).toBe(3);
    expect(spareOf({ basis: 'none' }, { pieces: 60, pours: 3 })).toBe(0);
  });

  test(`with seed ${seed}, the least whole number that is not under rate times pieces`, () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000 }),
        fc.integer({ min: 1, max: 1_000_000_000 }),
        fc.integer({ min: 0, max: 1_000_000 }),
        (pieces, of, share) => {
          const worn = Math.floor((of * share) / 1_000_000);
          const spare = spareOf({ basis: 'own', worn, of }, { pieces, pours: 1 });
          expect(BigInt(spare) * BigInt(of) >= BigInt(worn) * BigInt(pieces)).toBe(true);
          expect(spare === 0 || BigInt(spare - 1) * BigInt(of) < BigInt(worn) * BigInt(pieces)).toBe(true);
        },
      ),
      { seed, numRuns: 500 },
    );
  });
});
