// What stands of what was told; stock with pieces planned to come and go; exceptions put into shifts; days between.
import { describe, expect, test } from 'vitest';
import type { Instruction } from '../../core/plan/choices.ts';
import { dayOfDate } from '../../core/plan/days.ts';
import { shiftsWith } from '../../core/plan/exceptions.ts';
import { msOf } from '../../core/plan/local-time.ts';
import { pourFinishingAt } from '../../core/plan/move-pour.ts';
import type { PlannedStock } from '../../core/plan/plan-changes.ts';
import { withPlanned } from '../../core/plan/planned-levels.ts';
import { toldNow } from '../../core/plan/told-now.ts';
import { workedDayFrom, workingDaysBetween } from '../../core/plan/working-days.ts';
import { numbersFrom } from '../bench/jobs.ts';
import { job, pourOf } from './pours-for-tests.ts';

const follow = (from: string, to: string): Instruction => ({ kind: 'follow', from, to });

describe('What stands of what was told', () => {
  test('the last word on an arrival counts, and what it overrules is told no more, at its other end neither', () => {
    const told = toldNow([
      { instructions: [follow('A', 'B'), follow('C', 'D')], released: [] },
      { instructions: [follow('E', 'B')], released: [] },
    ]);
    expect(told).toEqual([follow('E', 'B'), follow('C', 'D')]);
  });

  test('what is released is told no more, until it is told again', () => {
    const first = { instructions: [follow('A', 'B')], released: [] };
    const released = { instructions: [], released: [follow('A', 'B')] };
    expect(toldNow([first, released])).toEqual([]);
    expect(toldNow([first, released, first])).toEqual([follow('A', 'B')]);
  });

  test('a break-down overrules a follow out of the same turn, an assembly one into it', () => {
    const first = { instructions: [follow('A', 'B')], released: [] };
    const broken: Instruction = { kind: 'break-down', turn: 'A' };
    const made: Instruction = { kind: 'assemble', turn: 'B' };
    expect(toldNow([first, { instructions: [broken], released: [] }])).toEqual([broken]);
    expect(toldNow([first, { instructions: [made], released: [] }])).toEqual([made]);
  });
});

const planned = (quantity: number, from: string, to: string | null): PlannedStock => ({
  kind: 'hire',
  component: 'LK',
  quantity,
  from,
  to,
  costCents: 0,
  source: null,
  remark: null,
});

describe('Stock with what is planned to come and go', () => {
  const [mon, tue, wed, thu] = [2, 3, 4, 5].map((day) => `2026-03-0${day}T07:00:00-05:00`);

  test('40 on hire from Tuesday to Thursday lie on top of what there is, also where that changes between', () => {
    const levels = [
      { fromMs: null, quantity: 100 },
      { fromMs: msOf(wed ?? ''), quantity: 90 },
    ];
    expect(withPlanned(levels, [planned(40, tue ?? '', thu ?? '')])).toEqual([
      { fromMs: null, quantity: 100 },
      { fromMs: msOf(tue ?? ''), quantity: 140 },
      { fromMs: msOf(wed ?? ''), quantity: 130 },
      { fromMs: msOf(thu ?? ''), quantity: 90 },
    ]);
  });

  test('pieces given away take off, never below nothing', () => {
    const levels = [{ fromMs: null, quantity: 10 }];
    expect(withPlanned(levels, [planned(-25, mon ?? '', null)])).toEqual([
      { fromMs: null, quantity: 10 },
      { fromMs: msOf(mon ?? ''), quantity: 0 },
    ]);
  });

  test('of a component that nobody has had, it begins with nothing', () => {
    expect(withPlanned([], [planned(4, mon ?? '', null)])).toEqual([
      { fromMs: null, quantity: 0 },
      { fromMs: msOf(mon ?? ''), quantity: 4 },
    ]);
  });
});

describe('Exceptions of the calendar', () => {
  test('days off join those of the shifts once each; extra work keeps its hours', () => {
    const off = { kind: 'off', date: '2026-03-04', reason: 'weather', remark: null } as const;
    const night = {
      kind: 'extra',
      date: '2026-03-06',
      start: '20:00',
      end: '02:00',
      reason: 'night',
      remark: null,
    } as const;
    const shifts = { ...job.shifts, off: ['2026-03-04', '2026-03-02'] };
    const made = shiftsWith(shifts, [off, night]);
    expect(made.off).toEqual(['2026-03-02', '2026-03-04']);
    expect(made.extra).toEqual([{ date: '2026-03-06', start: '20:00', end: '02:00' }]);
    expect(shiftsWith(shifts, [])).toBe(shifts);
  });
});

describe('Working days between', () => {
  test('2,000 random days and counts: so many working days on, and one has come as far', () => {
    const next = numbersFrom(7);
    const shifts = { ...job.shifts, off: ['2026-03-04', '2026-03-17', '2026-04-03'] };
    const start = dayOfDate('2026-03-02');
    for (let round = 0; round < 2000; round += 1) {
      const from = start + Math.floor(next() * 40);
      const count = Math.floor(next() * 41) - 20;
      const to = workedDayFrom(from, count, shifts);
      expect([from, count, workingDaysBetween(from, to, shifts)]).toEqual([from, count, count]);
    }
  });

  test('a pour that finishes on another day takes its sides with it and keeps the hour it was given', () => {
    // From Wednesday to Monday: three working days.
    const moved = pourFinishingAt(pourOf(), '2026-03-09T14:00:00-04:00', job);
    expect(moved.finishAt).toBe('2026-03-09T14:00:00-04:00');
    expect(moved.sides.map(({ setAt }) => setAt)).toEqual([
      '2026-03-05T07:00:00-05:00',
      '2026-03-06T07:00:00-05:00',
    ]);
  });
});
