// Which days are worked by a calendar: the days of the week that it names less its days off, and days with extra work.
import { dayOfDate, weekdayOfDay } from './days.ts';
import type { Shifts } from './shifts.ts';

/** Whether a day, numbered as in days.ts, has its usual shift. Made once for many questions. */
export function usualDays(shifts: Shifts): (day: number) => boolean {
  const working = new Set(shifts.days);
  const off = new Set((shifts.off ?? []).map((date) => dayOfDate(date)));
  return (day) => working.has(weekdayOfDay(day)) && !off.has(day);
}

/** Whether a day is worked: it has its usual shift, or extra work begins on it. */
export function workedDays(shifts: Shifts): (day: number) => boolean {
  const isUsual = usualDays(shifts);
  const extra = new Set((shifts.extra ?? []).map(({ date }) => dayOfDate(date)));
  return (day) => isUsual(day) || extra.has(day);
}

/**
 * The day so many worked days later, or (below zero) earlier; 0 is the day itself. A day that is not worked
 * counts from there. The shifts must have passed `checkShifts`, so that there is a day to find.
 */
export function workedDayFrom(day: number, count: number, shifts: Shifts): number {
  const isWorked = workedDays(shifts);
  const step = count > 0 ? 1 : -1;
  let at = day;
  for (let left = Math.abs(count); left > 0;) {
    at += step;
    if (isWorked(at)) left -= 1;
  }
  return at;
}

/** How many worked days one goes on from a day to reach another, or (below zero) back. */
export function workingDaysBetween(from: number, to: number, shifts: Shifts): number {
  const isWorked = workedDays(shifts);
  let count = 0;
  for (let day = from + 1; day <= to; day += 1) if (isWorked(day)) count += 1;
  for (let day = to; day < from; day += 1) if (isWorked(day)) count -= 1;
  return count;
}
