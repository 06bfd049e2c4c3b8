// What is short while a shortfall lasts, where one plan has more short than another, what is left to spare, and the quick look
// with every gang on its way: by hand.
import { describe, expect, test } from 'vitest';
import type { PlanInput } from '../../core/plan/contract.ts';
import { leastSpare } from '../../core/plan/ways/least-spare.ts';
import { shortWithSameRuns } from '../../core/plan/ways/same-runs.ts';
import { moreShort, shortIn } from '../../core/plan/ways/short-in.ts';

const at = (day: number, hour = 0): string =>
  `2026-03-${String(day).padStart(2, '0')}T${String(hour).padStart(2, '0')}:00:00Z`;
const short = (component: string, from: string, to: string, quantity: number) => ({
  component,
  from,
  to,
  quantity,
});

describe('short while it lasts', () => {
  test('the most of the stretches of the component that touch it', () => {
    const of = short('LK', at(3), at(5), 6);
    const after = [
      short('LK', at(2), at(3), 9),
      short('LK', at(4), at(6), 4),
      short('LK', at(4, 12), at(7), 5),
      short('R8', at(3), at(5), 7),
    ];
    expect(shortIn(after, of)).toBe(5);
    expect(shortIn([], of)).toBe(0);
  });

  test('a stretch that splits without growing is no more; one piece or one hour beyond it is', () => {
    const before = [short('LK', at(3), at(5), 6), short('LK', at(5), at(7), 4)];
    const is = (from: string, to: string, quantity: number): number =>
      moreShort(before, [short('LK', from, to, quantity)]).length;
    expect(is(at(3), at(4), 6)).toBe(0);
    expect(is(at(3), at(7), 4)).toBe(0);
    expect(is(at(3), at(7), 5)).toBe(1);
    expect(is(at(6), at(7, 1), 1)).toBe(1);
    expect(moreShort(before, [short('R8', at(3), at(4), 1)])).toHaveLength(1);
  });
});

describe('to spare', () => {
  const held = [
    { from: at(2), quantity: 3 },
    { from: at(4), quantity: 8 },
    { from: at(6), quantity: 0 },
  ];
  const stock = [
    { from: null, quantity: 10 },
    { from: at(5), quantity: 7 },
  ];

  test.each([
    ['before anything is held', at(1), at(2), 10],
    ['while three are', at(2), at(3), 7],
    ['the least of a stretch', at(3), at(4, 1), 2],
    ['where the stock falls under what is held', at(5), at(6), -1],
    ['afterwards', at(6), at(9), 7],
  ])('%s', (_what, from, to, left) => {
    expect(leastSpare(held, stock, { from, to })).toBe(left);
  });

  test('of what no plan holds and nobody has there is none', () => {
    expect(leastSpare([], [], { from: at(1), to: at(2) })).toBe(0);
  });
});

describe('with every gang on its way', () => {
  // Two gangs of ten locks and fifteen in stock: short by five where both stand.
  const input: PlanInput = {
    components: [
      { code: 'LK', stock: 15, hirePerDay: 4 },
      { code: 'PA', stock: 9, hirePerDay: null },
    ],
    designs: [{ code: 'G', pieces: { LK: 10, PA: 2 }, assembleH: 0, breakDownH: 0 }],
    turns: [
      { id: 'one', design: 'G', from: at(2), to: at(4) },
      { id: 'two', design: 'G', from: at(3), to: at(5) },
    ],
    turnaround: { flyOnH: 1, regangBaseH: 0, regangPerPieceH: { LK: 0, PA: 0 }, cleanH: 0 },
    labourPerH: 100,
  };
  const runs = [{ turns: ['one'] }, { turns: ['two'] }];
  const span = { from: at(3), to: at(4) };

  const look = (turns: ReadonlyMap<string, { from: string; to: string }>): number | null =>
    shortWithSameRuns({ input, runs, component: 'LK' }, { turns, loose: new Map() }, span);

  test('as they stand five are short; with the second a day later, none', () => {
    expect(look(new Map())).toBe(5);
    expect(look(new Map([['two', { from: at(4), to: at(6) }]]))).toBe(0);
    // Twelve hours later they still stand together for half a day.
    expect(look(new Map([['two', { from: at(3, 12), to: at(5, 12) }]]))).toBe(5);
  });

  test('a follow that no longer fits is cut', () => {
    const later = new Map([
      ['one', { from: at(2), to: at(3) }],
      ['two', { from: at(3), to: at(5) }],
    ]);
    const one = [{ turns: ['one', 'two'] }];
    expect(
      shortWithSameRuns({ input, runs: one, component: 'LK' }, { turns: later, loose: new Map() }, span),
    ).toBe(0);
    expect(
      shortWithSameRuns({ input, runs: one, component: 'LK' }, { turns: new Map(), loose: new Map() }, span),
    ).toBe(5);
  });
});
