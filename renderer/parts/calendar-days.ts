// Calendar days that so many working days come to from a date, by the board's own days where it has them.
import { addDays } from './zoned.ts';

export function calendarDays(
  date: string,
  workingDays: number,
  days: readonly { readonly date: string; readonly working: boolean }[],
): number {
  const known = new Map(days.map((day) => [day.date, day.working]));
  const way = workingDays < 0 ? -1 : 1;
  let left = Math.abs(workingDays);
  let passed = 0;
  while (left > 0) {
    passed += way;
    const next = addDays(date, passed);
    const weekday = new Date(`${next}T00:00:00Z`).getUTCDay();
    if (known.get(next) ?? (weekday >= 1 && weekday <= 5)) left -= 1;
  }
  return passed;
}
