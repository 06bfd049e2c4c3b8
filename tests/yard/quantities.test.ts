// Quantities as sums of movements, and what they say of the opening figures under them.
import { describe, expect, test } from 'vitest';
import { momentMs } from '../../core/yard/moment.ts';
import { reversalOf } from '../../core/yard/movement.ts';
import type { Movement } from '../../core/yard/movement.ts';
import { stockAfter } from '../../core/yard/quantities.ts';

const opening: Movement = {
  id: 'm1',
  component: 'P1',
  quantity: 40,
  owner: 'OURS',
  from: 'START',
  to: 'NORTH',
  condition: 'ready',
  conditionAfter: 'ready',
  reason: 'opening',
  at: '2026-03-01T07:00:00-05:00',
  who: 'tester',
  noteNumber: null,
  remark: null,
  basis: 'counted',
  basisDate: '2026-02-27',
  reverses: null,
  paper: null,
};
const strip: Movement = {
  ...opening,
  id: 'm2',
  quantity: 15,
  from: 'NORTH',
  to: 'SITE',
  conditionAfter: 'to-clean',
  reason: 'strip',
  basis: null,
  basisDate: null,
};
const back = reversalOf(opening, { id: 'm3', at: '2026-03-05T07:00:00-05:00', who: 'tester', remark: null });

const figures = (movements: readonly Movement[]): string[] =>
  stockAfter(movements).map((line) =>
    [line.location, line.condition, line.quantity, line.basis, line.basisDate].join(' '),
  );

describe('Stock', () => {
  test('of 40 opened and 15 moved on is 25 and 15, with -40 where they came from', () => {
    expect(figures([opening, strip])).toEqual([
      'START ready -40  ',
      'NORTH ready 25 counted 2026-02-27',
      'SITE to-clean 15  ',
    ]);
  });

  test('of 40 opened and taken back is nothing at all', () => {
    expect(figures([opening, back])).toEqual([]);
  });

  test('rests on the weakest figure and the oldest date: counted and estimated is estimated', () => {
    const estimated: Movement = {
      ...opening,
      id: 'm4',
      quantity: 2,
      basis: 'estimated',
      basisDate: '2026-02-28',
    };
    expect(figures([opening, estimated])).toContain('NORTH ready 42 estimated 2026-02-27');
    expect(figures([estimated, opening])).toContain('NORTH ready 42 estimated 2026-02-27');
  });

  test('no longer rests on a figure that was taken back: estimated, taken back, counted is counted', () => {
    const estimated: Movement = { ...opening, basis: 'estimated', basisDate: '2026-01-15' };
    const counted: Movement = { ...opening, id: 'm5', quantity: 38 };
    expect(figures([estimated, back, counted])).toContain('NORTH ready 38 counted 2026-02-27');
  });
});

describe('A moment', () => {
  test.each([
    ['2026-03-02T07:00:00-05:00', Date.UTC(2026, 2, 2, 12)],
    ['2026-03-02T12:00:00Z', Date.UTC(2026, 2, 2, 12)],
    ['2026-03-02T17:30:00.25+05:30', Date.UTC(2026, 2, 2, 12, 0, 0, 250)],
    ['2026-03-02T12:00Z', Date.UTC(2026, 2, 2, 12)],
    ['2026-02-29T12:00:00Z', null],
    ['2026-03-02T12:00:00', null],
    ['2026-03-02', null],
    ['2026-03-02T12:00:00.0001Z', null],
    ['now', null],
    ['', null],
  ])('%j is %j', (text, ms) => {
    expect(momentMs(text)).toBe(ms);
  });
});
