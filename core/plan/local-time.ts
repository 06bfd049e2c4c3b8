// Between instants and the wall clock of a job: ISO text with the offset of the moment, and local dates.
import { Temporal } from 'temporal-polyfill';
import { dateOfDay, dayOfDate, zoneDays, type ZoneDays } from './days.ts';

/** Epoch milliseconds of ISO 8601 text with an offset; the text was checked at the door. */
export function msOf(instant: string): number {
  return Temporal.Instant.from(instant).epochMilliseconds;
}

/** ISO 8601 text with the offset that the time zone has at that moment. */
export function instantText(ms: number, timeZone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(ms)
    .toZonedDateTimeISO(timeZone)
    .toString({ timeZoneName: 'never', smallestUnit: ms % 1000 === 0 ? 'second' : 'millisecond' });
}

const zones = new Map<string, ZoneDays>();

/** The days of a time zone, remembered from one question to the next. */
export function zoneOf(timeZone: string): ZoneDays {
  const known = zones.get(timeZone);
  if (known !== undefined) return known;
  const made = zoneDays(timeZone);
  zones.set(timeZone, made);
  return made;
}

/** The local date, YYYY-MM-DD, on which the instant falls. */
export function localDate(ms: number, timeZone: string): string {
  return dateOfDay(zoneOf(timeZone).dayOf(ms));
}

/** The first moment of a local date. */
export function startOfDate(date: string, timeZone: string): number {
  return zoneOf(timeZone).startMs(dayOfDate(date));
}
