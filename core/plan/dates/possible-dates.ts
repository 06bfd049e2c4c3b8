// The dates that a pour can have: every working day from the earliest on which nothing holds it back.
import { instantText, zoneOf } from '../local-time.ts';
import { pourFinishingAt } from '../move-pour.ts';
import { pourTimes, type PourTimes } from '../pour-times.ts';
import type { Pour } from '../pours.ts';
import { workedDayFrom, workedDays } from '../working-days.ts';
import { type Around, finishOn, type HoldBack, holdBackOf } from './hold-back.ts';

export interface PossibleDate {
  /** With its sides moved along. */
  readonly pour: Pour;
  readonly times: PourTimes;
}

export interface PossibleDates {
  /** What keeps it from the working day before the earliest; null where it could have been any day. */
  readonly heldBack: HoldBack | null;
  readonly dates: readonly PossibleDate[];
}

/** Working days looked through for the earliest: two years. */
const lookedThrough = 520;

export function possibleDates(pour: Pour, around: Around, wanted: number): PossibleDates {
  const { job, nowMs } = around;
  const dates: PossibleDate[] = [];
  let heldBack: HoldBack | null = null;
  let day = zoneOf(job.timeZone).dayOf(nowMs);
  if (!workedDays(job.shifts)(day)) day = workedDayFrom(day, 1, job.shifts);
  for (let looked = 0; looked < lookedThrough && dates.length < wanted; looked += 1) {
    const date = dateOn(pour, day, around);
    const held = holdBackOf(date.pour, date.times, around);
    if (held === null) dates.push(date);
    else heldBack = held;
    day = workedDayFrom(day, 1, job.shifts);
  }
  return { heldBack, dates };
}

export function dateOn(pour: Pour, day: number, { job }: Pick<Around, 'job'>): PossibleDate {
  const finishAt = instantText(finishOn(pour, day, job.timeZone), job.timeZone);
  const moved = pourFinishingAt(pour, finishAt, job);
  return { pour: moved, times: pourTimes(moved, job) };
}
