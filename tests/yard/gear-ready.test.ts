// Lifting gear by its inspections: ready up to and on the last day, not after, and never without one.
import { describe, expect, test } from 'vitest';
import { gearNotReady, gearStanding, serialsOver } from '../../core/yard/gear-ready.ts';
import type { LiftingGear } from '../../core/yard/lifting-gear.ts';
import type { StockLine } from '../../core/yard/quantities.ts';

const hook = (serial: string, goodUntil: string | null, passed = true, place = 'ENN'): LiftingGear => ({
  serial,
  component: 'HK',
  owner: 'OURS',
  place,
  last:
    goodUntil === null
      ? null
      : { number: 1, inspectedOn: '2026-01-05', goodUntil, passed, by: 'tester', remark: null },
});
const held = (quantity: number, condition: StockLine['condition'] = 'ready'): StockLine => ({
  component: 'HK',
  owner: 'OURS',
  location: 'ENN',
  condition,
  quantity,
  basis: null,
  basisDate: null,
});

describe('what is out of date', () => {
  const gear = [
    hook('H1', '2026-03-03'),
    hook('H2', '2026-06-30'),
    hook('H3', '2026-06-30', false),
    hook('H4', null),
  ];

  test.each([
    ['2026-03-03', 2],
    ['2026-03-04', 3],
    ['2026-07-01', 4],
  ])('on %s %i pieces are taken off', (date, pieces) => {
    expect([...gearNotReady(gear, date)]).toEqual([['HK', pieces]]);
  });

  test('a piece that is not among those asked for takes nothing off', () => {
    expect(
      gearNotReady([hook('H4', null, true, 'SHOP')], '2026-03-01', (each) => each.place === 'ENN'),
    ).toEqual(new Map());
  });

  test('why: out of date since 3 March, failed on 5 January, never inspected', () => {
    expect(gear.map((each) => gearStanding(each, '2026-03-04'))).toEqual([
      { is: 'out-of-date', since: '2026-03-03' },
      { is: 'ready', until: '2026-06-30' },
      { is: 'failed', on: '2026-01-05' },
      { is: 'never-inspected' },
    ]);
  });
});

test('three serials where the ledger has two pieces, in whatever condition, are named', () => {
  const gear = [hook('H1', null), hook('H2', null), hook('H3', null)];
  expect(serialsOver(gear, [held(1), held(2, 'to-repair')])).toEqual([]);
  expect(serialsOver(gear, [held(1), held(1, 'to-repair')])).toEqual([
    { component: 'HK', owner: 'OURS', place: 'ENN', serials: 3, pieces: 2 },
  ]);
});
