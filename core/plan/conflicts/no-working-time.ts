// A stretch of the plan in which nobody works: every worked day of it was taken out of the calendar, and something has
// to be done in it. Named with the dates that took them out.
import { shiftsBetween } from '../calendar.ts';
import { dateOfDay, dayOfDate, weekdayOfDay } from '../days.ts';
import { zoneOf } from '../local-time.ts';
import type { PourFinding } from '../pour-findings.ts';
import type { Job } from '../pours.ts';

/** @param firstMs @param lastMs of all that the plan has to do, epoch milliseconds */
export function noWorkingTime(job: Job, firstMs: number, lastMs: number): PourFinding[] {
  const zone = zoneOf(job.timeZone);
  const [first, last] = [zone.dayOf(firstMs), zone.dayOf(lastMs)];
  const [from, to] = [zone.startMs(first), zone.startMs(last + 1)];
  if (!(firstMs <= lastMs) || shiftsBetween(from, to, job.shifts).length > 0) return [];
  const off = (job.shifts.off ?? []).filter((date) => {
    const day = dayOfDate(date);
    return day >= first && day <= last && job.shifts.days.includes(weekdayOfDay(day));
  });
  const why = off.length === 0 ? 'none of its days is a working day' : `${off.join(', ')} are off`;
  return [
    {
      rule: 'no-working-time',
      severity: 'stop',
      message: `From ${dateOfDay(first)} to ${dateOfDay(last)} the plan has work and the calendar has no shift: ${why}.`,
      where: job.code,
    },
  ];
}
