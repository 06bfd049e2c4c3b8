// Between instants and the wall clock of a job: ISO text with the offset of the moment, and local dates.
import { Temporal } from 'temporal-polyfill';
import { dateOfDay, dayMs, dayOfDate, zoneDays, type ZoneDays } from './days.ts';

const plainInstant =
  /^(\d{4}-\d\d-\d\d)T([01]\d|2[0-3]):([0-5]\d)(?::([0-5]\d)(?:\.(\d{3}))?)?(?:Z|([+-])([01]\d|2[0-3]):([0-5]\d))$/u;

/**
 * Epoch milliseconds of ISO 8601 text with an offset; the text was checked at the door. A plan reads thousands of them, and
 * Temporal takes its time for each: what is written the usual way is counted from its day.
 */
export function msOf(instant: string): number {
  const found = plainInstant.exec(instant);
  if (found === null) return Temporal.Instant.from(instant).epochMilliseconds;
  const [, date = '', hour, minute, second = 0, thousandth = 0, sign, offsetHour = 0, offsetMinute = 0] =
    found;
  const offset = (Number(offsetHour) * 60 + Number(offsetMinute)) * 60_000;
  const clock = (Number(hour) * 3600 + Number(minute) * 60 + Number(second)) * 1000 + Number(thousandth);
  return dayOfDate(date) * dayMs + clock - (sign === '-' ? -offset : offset);
}

/** ISO 8601 text with the offset that the time zone has at that moment. */
export function instantText(ms: number, timeZone: string): string {
  const zone = zoneOf(timeZone);
  const day = zone.dayOf(ms);
  const start = zone.startMs(day);
  const offsetMinutes = (day * dayMs - start) / 60_000;
  // Hundreds of texts stand on a board, and asking Temporal for each takes its time: on a day without a clock
  // change the wall clock is counted from midnight.
  const isPlain =
    zone.startMs(day + 1) - start === dayMs && Number.isInteger(offsetMinutes) && ms % 1000 === 0;
  if (!isPlain) return exactText(ms, timeZone);
  return `${dateText(day)}T${clockText((ms - start) / 1000)}${offsetText(offsetMinutes)}`;
}

function exactText(ms: number, timeZone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(ms)
    .toZonedDateTimeISO(timeZone)
    .toString({ timeZoneName: 'never', smallestUnit: ms % 1000 === 0 ? 'second' : 'millisecond' });
}

function clockText(seconds: number): string {
  return [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60].map(twoDigits).join(':');
}

function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  return `${minutes < 0 ? '-' : '+'}${twoDigits(Math.floor(size / 60))}:${twoDigits(size % 60)}`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}

const dates = new Map<number, string>();

function dateText(day: number): string {
  const known = dates.get(day);
  if (known !== undefined) return known;
  const made = dateOfDay(day);
  dates.set(day, made);
  return made;
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
  return dateText(zoneOf(timeZone).dayOf(ms));
}

/** The first moment of a local date. */
export function startOfDate(date: string, timeZone: string): number {
  return zoneOf(timeZone).startMs(dayOfDate(date));
}
