import { expect, test } from 'vitest';
import { dateOfDay, dayOfDate } from '../../core/plan/days.ts';
import { workedDayFrom, workedDays } from '../../core/plan/working-days.ts';

const shifts = {
  timeZone: 'America/New_York',
  days: [1, 2, 3, 4, 5],
  start: '07:00',
  end: '15:30',
  off: ['2026-03-09'],
};
const from = (date: string, count: number): string =>
  dateOfDay(workedDayFrom(dayOfDate(date), count, shifts));

test('Monday to Friday are worked, a day off and the weekend are not', () => {
  const week = ['2026-03-06', '2026-03-07', '2026-03-08', '2026-03-09', '2026-03-10'].map((date) =>
    dayOfDate(date),
  );
  expect(week.map(workedDays(shifts))).toEqual([true, false, false, false, true]);
});

test('a worked day after Friday 6 March is Tuesday 10 March, and before that Tuesday it is the Friday', () => {
  expect(from('2026-03-06', 1)).toBe('2026-03-10');
  expect(from('2026-03-10', -1)).toBe('2026-03-06');
  expect(from('2026-03-07', 0)).toBe('2026-03-07');
  expect(from('2026-03-07', 2)).toBe('2026-03-11');
});
