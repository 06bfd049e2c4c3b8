import { describe, expect, test } from 'vitest';
import { makeDayScale, spanOf, workingDaysBetween } from '../../../renderer/screens/board/day-scale.ts';
import { dayStartMs, mondayOf, weekNumber } from '../../../renderer/parts/zoned.ts';
import { madeDays, timeZone } from './made-board.ts';

const days = madeDays('2026-02-23', 70);
const scale = makeDayScale(days, { from: '2026-03-02', days: 14 }, timeZone, 1060);

/** Clock hours of a day in New York. */
function hours(date: string, next: string): number {
  return (dayStartMs(next, timeZone) - dayStartMs(date, timeZone)) / 3_600_000;
}

describe('days across the board', () => {
  test('ten working days and four off fill the width: 1060 px make 94.6 px a working day', () => {
    expect(scale.days).toHaveLength(14);
    expect(scale.days[0]?.width).toBeCloseTo(1060 / 11.2, 5);
    expect(scale.days[5]?.width).toBeCloseTo((1060 / 11.2) * 0.3, 5);
    expect((scale.days[13]?.x ?? 0) + (scale.days[13]?.width ?? 0)).toBeCloseTo(1060, 5);
  });

  test('the 8.5 hours of a shift take 74 % of a working day', () => {
    const from = scale.x(Date.parse('2026-03-03T07:00:00-05:00'));
    const to = scale.x(Date.parse('2026-03-03T15:30:00-05:00'));
    expect((to - from) / (scale.days[1]?.width ?? 0)).toBeCloseTo(0.74, 1);
  });

  test('later is never further left, across the clock change too', () => {
    let before = -1;
    for (let ms = scale.fromMs; ms <= scale.toMs; ms += 20 * 60_000) {
      expect(scale.x(ms)).toBeGreaterThanOrEqual(before);
      before = scale.x(ms);
    }
    expect(before).toBe(1060);
  });

  test('an instant outside is drawn at the edge and counts as not shown', () => {
    expect(scale.x(Date.parse('2026-02-01T07:00:00-05:00'))).toBe(0);
    expect(scale.shows(Date.parse('2026-02-01T07:00:00-05:00'), scale.fromMs)).toBe(false);
    expect(scale.shows(scale.fromMs - 1, scale.fromMs + 1)).toBe(true);
  });

  test('dragging over a weekend counts working days: Friday noon to Monday noon is 1', () => {
    const friday = scale.x(Date.parse('2026-03-06T11:15:00-05:00'));
    const monday = scale.x(Date.parse('2026-03-09T11:15:00-04:00'));
    expect(workingDaysBetween(scale, friday, monday)).toBe(1);
    expect(workingDaysBetween(scale, monday, friday)).toBe(-1);
    expect(workingDaysBetween(scale, friday, friday + 3)).toBe(0);
  });

  test('two weeks begin on a Monday; all weeks reach from the first to the last of the plan', () => {
    expect(spanOf(days, '2026-03-05', false)).toEqual({ from: '2026-03-02', days: 14 });
    expect(spanOf(days, '2026-03-05', true)).toEqual({ from: '2026-02-23', days: 70 });
  });
});

describe('days of a zone', () => {
  test('8 March 2026 in New York has 23 hours, 1 November 25', () => {
    expect(hours('2026-03-08', '2026-03-09')).toBe(23);
    expect(hours('2026-11-01', '2026-11-02')).toBe(25);
    expect(hours('2026-03-09', '2026-03-10')).toBe(24);
  });

  // ISO 8601 week numbers; 1 January 2027 being a Friday belongs to week 53 of 2026 (a calendar was looked at).
  test.each([
    ['2026-03-02', 10],
    ['2026-01-01', 1],
    ['2027-01-01', 53],
  ])('%s is in week %i', (date, week) => {
    expect(weekNumber(date)).toBe(week);
  });

  test('the Monday of a Sunday is six days before', () => {
    expect(mondayOf('2026-03-08')).toBe('2026-03-02');
    expect(mondayOf('2026-03-02')).toBe('2026-03-02');
  });
});
