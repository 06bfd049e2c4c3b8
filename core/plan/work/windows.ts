// When a crane works for the forms: its hours of the days it is there, and whatever was added, less what other trades have
// booked and what is lost to wind.
import { zoneDays } from '../days.ts';
import { dayOfDate, weekdayOfDay } from '../days.ts';
import { msOf } from '../local-time.ts';
import type { CraneHours } from '../planning-settings.ts';
import { minuteOfDay, type Shifts } from '../shifts.ts';
import type { CraneBooking } from './crane-booking.ts';

export interface Free {
  readonly from: number;
  readonly to: number;
}

/** In order, without overlaps, within the date; several entries of one crane are several stretches of its day. */
export function freeStretches(
  hours: readonly CraneHours[],
  bookings: readonly CraneBooking[],
  date: string,
  shifts: Shifts,
): readonly Free[] {
  const zone = zoneDays(shifts.timeZone);
  const day = dayOfDate(date);
  const span = { from: zone.startMs(day), to: zone.startMs(day + 1) };
  const isOff = (shifts.off ?? []).includes(date);
  const usual = hours
    .filter(({ days }) => !isOff && days.includes(weekdayOfDay(day)))
    .map(({ start, end }) => ({
      from: zone.wallClockMs(day, minuteOfDay(start)),
      to: zone.wallClockMs(day, minuteOfDay(end)),
    }));
  const booked = bookings.map(({ kind, from, to }) => ({ kind, from: msOf(from), to: msOf(to) }));
  const added = booked.filter(({ kind }) => kind === 'extra').map((each) => within(each, span));
  const taken = booked.filter(({ kind }) => kind !== 'extra').map((each) => within(each, span));
  return taken.reduce<readonly Free[]>(less, union([...usual, ...added]));
}

export function minutesIn(stretches: readonly Free[]): number {
  return stretches.reduce((sum, { from, to }) => sum + (to - from), 0) / 60_000;
}

function within({ from, to }: Free, span: Free): Free {
  return { from: Math.max(from, span.from), to: Math.min(to, span.to) };
}

function union(stretches: readonly Free[]): readonly Free[] {
  const list: Free[] = [];
  for (const next of stretches
    .filter(({ from, to }) => to > from)
    .sort((one, other) => one.from - other.from)) {
    const last = list.at(-1);
    if (last === undefined || next.from > last.to) list.push(next);
    else if (next.to > last.to) list[list.length - 1] = { from: last.from, to: next.to };
  }
  return list;
}

function less(stretches: readonly Free[], taken: Free): readonly Free[] {
  if (taken.to <= taken.from) return stretches;
  return stretches.flatMap(({ from, to }) =>
    [
      { from, to: Math.min(to, taken.from) },
      { from: Math.max(from, taken.to), to },
    ].filter((each) => each.to > each.from),
  );
}
