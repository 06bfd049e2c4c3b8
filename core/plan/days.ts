// Local days of a time zone as instants: where each calendar day begins, and the wall clock within it.
// Asking Temporal costs microseconds, so every day is asked once and remembered as epoch milliseconds.
import { Temporal } from 'temporal-polyfill';

/** Milliseconds of an ordinary day; a day with a clock change is longer or shorter. */
export const dayMs = 86_400_000;

/** Calendar days are numbered from 1970-01-01, which is day 0. */
export interface ZoneDays {
  readonly timeZone: string;
  /** The instant at which the day begins (its midnight, or the first moment where midnight is skipped). */
  startMs(day: number): number;
  /** The number of the day in which the instant lies. */
  dayOf(instantMs: number): number;
  /** The instant of a wall-clock time; a time skipped by a clock change is moved on, a doubled one is the earlier. */
  wallClockMs(day: number, minuteOfDay: number): number;
}

/** `YYYY-MM-DD` of a day number. */
export function dateOfDay(day: number): string {
  return plainDate(day).toString();
}

/** The day number of `YYYY-MM-DD`; the text must be a date. */
export function dayOfDate(date: string): number {
  const known = dayNumbers.get(date);
  if (known !== undefined) return known;
  const day = epoch.until(Temporal.PlainDate.from(date), { largestUnit: 'days' }).days;
  dayNumbers.set(date, day);
  return day;
}

const dayNumbers = new Map<string, number>();

/** 1 is Monday ... 7 is Sunday; day 0, 1970-01-01, was a Thursday. */
export function weekdayOfDay(day: number): number {
  return ((((day + 3) % 7) + 7) % 7) + 1;
}

/** Whether Temporal knows the zone: a name of the IANA database or an offset such as `-05:00`. */
export function knowsTimeZone(timeZone: string): boolean {
  try {
    return plainDate(0).toZonedDateTime(timeZone).timeZoneId.length > 0;
  } catch {
    return false;
  }
}

const zones = new Map<string, ZoneDays>();

/** The days of a zone; the same answer for the same zone, so that its days are asked once. */
export function zoneDays(timeZone: string): ZoneDays {
  const known = zones.get(timeZone);
  if (known !== undefined) return known;
  const made = makeZoneDays(timeZone);
  zones.set(timeZone, made);
  return made;
}

function makeZoneDays(timeZone: string): ZoneDays {
  const starts = new Map<number, number>();
  const startMs = (day: number): number => {
    const known = starts.get(day);
    if (known !== undefined) return known;
    const start = plainDate(day).toZonedDateTime(timeZone).epochMilliseconds;
    starts.set(day, start);
    return start;
  };
  const dayOf = (instantMs: number): number => {
    let day = Math.floor(instantMs / dayMs);
    while (startMs(day) > instantMs) day -= 1;
    while (startMs(day + 1) <= instantMs) day += 1;
    return day;
  };
  const wallClockMs = (day: number, minuteOfDay: number): number => {
    const start = startMs(day);
    // A day of 24 hours has no clock change in it, so the wall clock runs with the instants.
    if (startMs(day + 1) - start === dayMs) return start + minuteOfDay * 60_000;
    const plainTime = new Temporal.PlainTime(Math.floor(minuteOfDay / 60), minuteOfDay % 60);
    return plainDate(day).toZonedDateTime({ timeZone, plainTime }).epochMilliseconds;
  };
  return { timeZone, startMs, dayOf, wallClockMs };
}

const epoch = new Temporal.PlainDate(1970, 1, 1);

function plainDate(day: number): Temporal.PlainDate {
  return epoch.add({ days: day });
}
