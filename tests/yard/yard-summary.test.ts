// The yard by component as a table: what lies where, and the column in which it must be counted.
import { describe, expect, test } from 'vitest';
import type { Condition, Location, Owner } from '../../core/yard/movement.ts';
import { peakBetween, yardSummary, type SummaryFacts } from '../../core/yard/yard-summary.ts';

const locations: readonly Location[] = [
  { code: 'NORTH', name: '', kind: 'yard' },
  { code: 'G-1', name: '', kind: 'gang' },
  { code: 'SHOP', name: '', kind: 'repair' },
  { code: 'AWAY', name: '', kind: 'other-job' },
  { code: 'HIRE', name: '', kind: 'supplier' },
  { code: 'LOST', name: '', kind: 'lost' },
];
const owners: readonly Owner[] = [
  { code: 'OURS', name: '', kind: 'ours', agreement: null },
  { code: 'H1', name: '', kind: 'supplier', agreement: null },
  { code: 'THEM', name: '', kind: 'others', agreement: null },
];
const line = (
  location: string,
  condition: Condition,
  quantity: number,
  owner = 'OURS',
  component = 'P1',
) => ({
  component,
  owner,
  location,
  condition,
  quantity,
});
const noteLine = (component: string, sent: number, counted: number | null = null) => ({
  component,
  owner: 'H1',
  condition: 'ready' as const,
  sent,
  counted,
  countedThere: null,
  container: null,
  remark: null,
});

function summed(more: Partial<SummaryFacts>): ReturnType<typeof yardSummary> {
  return yardSummary({
    stock: [],
    locations,
    owners,
    drafts: [],
    needs: null,
    earlier: (one, other) => Date.parse(one) < Date.parse(other),
    ...more,
  });
}

describe('Of one component', () => {
  test.each([
    [line('NORTH', 'ready', 5), 'ready'],
    [line('NORTH', 'ready-hidden', 5), 'ready'],
    [line('G-1', 'ready', 5), 'ready'],
    [line('NORTH', 'ready', 5, 'H1'), 'ready'],
    [line('NORTH', 'to-clean', 5), 'toClean'],
    [line('NORTH', 'to-repair', 5), 'toRepair'],
    [line('NORTH', 'quarantine', 5), 'quarantine'],
    [line('NORTH', 'scrapped', 5), 'scrapped'],
    [line('SHOP', 'to-repair', 5), 'away'],
    [line('AWAY', 'ready', 5), 'away'],
    [line('NORTH', 'ready', 5, 'THEM'), 'notOurs'],
    [line('AWAY', 'ready', 5, 'THEM'), 'notOurs'],
  ] as const)('%o counts as %s and as nothing else', (there, column) => {
    const [row] = summed({ stock: [there] });
    const { ready, toClean, toRepair, quarantine, scrapped, away, notOurs } = row!;
    const columns = { ready, toClean, toRepair, quarantine, scrapped, away, notOurs };
    expect(columns).toEqual({
      ...Object.fromEntries(Object.keys(columns).map((each) => [each, 0])),
      [column]: 5,
    });
  });

  test.each([line('HIRE', 'ready', -40), line('LOST', 'ready', 3)])('%o is outside and no row', (there) => {
    expect(summed({ stock: [there] })).toEqual([]);
  });

  test('12 needed and 9 ready are 3 below, whatever is dirty or belongs to others; 14 ready are none below', () => {
    const more = [line('NORTH', 'to-clean', 8), line('NORTH', 'ready', 8, 'THEM')];
    const needs = new Map([['P1', 12]]);
    expect(summed({ stock: [line('NORTH', 'ready', 9), ...more], needs })[0]).toMatchObject({
      need: 12,
      below: 3,
    });
    expect(summed({ stock: [line('NORTH', 'ready', 14)], needs })[0]).toMatchObject({ need: 12, below: 0 });
    expect(summed({ stock: [line('NORTH', 'ready', 14)] })[0]).toMatchObject({ need: null, below: null });
  });

  test('what is needed and nowhere to be had is a row', () => {
    expect(summed({ needs: new Map([['P9', 4]]) })).toMatchObject([{ component: 'P9', ready: 0, below: 4 }]);
  });
});

test('Two deliveries are due in with the earlier of their days, a return out; an issue to a gang is neither', () => {
  const [friday, monday] = ['2026-03-06T15:00:00-05:00', '2026-03-02T16:00:00Z'];
  const rows = summed({
    drafts: [
      { from: 'HIRE', to: 'NORTH', expectedAt: friday, lines: [noteLine('P1', 20), noteLine('P2', 4)] },
      { from: 'HIRE', to: 'NORTH', expectedAt: monday, lines: [noteLine('P1', 10, 8)] },
      { from: 'AWAY', to: 'NORTH', expectedAt: null, lines: [noteLine('P1', 1)] },
      { from: 'NORTH', to: 'HIRE', expectedAt: null, lines: [noteLine('P2', 3)] },
      { from: 'NORTH', to: 'G-1', expectedAt: monday, lines: [noteLine('P3', 7)] },
    ],
  });
  expect(rows).toMatchObject([
    { component: 'P1', dueIn: { quantity: 29, at: monday }, dueOut: { quantity: 0, at: null } },
    { component: 'P2', dueIn: { quantity: 4, at: friday }, dueOut: { quantity: 3, at: null } },
  ]);
});

test.each([
  [0, 10, 6],
  [4, 5, 6],
  [5, 9, 2],
  [5, 11, 9],
  [20, 30, 0],
  [-9, 0, 0],
  [-9, 1, 3],
])('the highest level from %i to %i is %i', (from, to, most) => {
  const steps = [
    { fromMs: 0, quantity: 3 },
    { fromMs: 3, quantity: 6 },
    { fromMs: 5, quantity: 2 },
    { fromMs: 10, quantity: 9 },
    { fromMs: 12, quantity: 0 },
  ];
  expect(peakBetween(steps, from, to)).toBe(most);
});
