// Local dates and times of a file as instants. Twice a year the clock jumps: a time that it shows twice, or
// not at all, is refused with what to write instead, since an hour's doubt moves a strip to another shift.
import { Temporal } from 'temporal-polyfill';
import type { Read } from './cells.ts';

const local = /^(\d{4}-\d{2}-\d{2})[ T]+(\d{1,2}):(\d{2})$/u;
const withOffset = /^\d{4}-\d{2}-\d{2}[ T]\d{2}:\d{2}(?::\d{2})?(?:Z|[+-]\d{2}:\d{2})$/u;

/**
 * Reads `2026-03-02 07:00` in the time zone, or a time with its own offset, as ISO 8601 with the offset of
 * the moment. Without a zone only times with an offset are read.
 */
export function readInstant(timeZone: string | null): Read<string> {
  return (text) => {
    if (withOffset.test(text)) return offsetInstant(text.replace(' ', 'T'), timeZone);
    const [, date, hour, minute] = local.exec(text) ?? [];
    const wanted = 'a date and time as YYYY-MM-DD HH:MM, such as 2026-03-02 07:00';
    if (date === undefined || hour === undefined || minute === undefined) return { wanted };
    if (timeZone === null) return { wanted: needsZone };
    return localInstant(`${date}T${hour.padStart(2, '0')}:${minute}`, timeZone, wanted);
  };
}

const needsZone =
  'a date and time with its offset, such as 2026-03-02T07:00-05:00. Maybe import the jobs first: their time zone is then taken';

/** The first moment of a local date. */
function startOfDate(date: string, timeZone: string): string {
  return isoText(Temporal.PlainDate.from(date).toZonedDateTime(timeZone));
}

/** A date alone (its first moment), or a date with a time. */
export function readDateOrInstant(timeZone: string | null): Read<{ date: string; at: string }> {
  const instant = readInstant(timeZone);
  return (text, unit) => {
    if (/^\d{4}-\d{2}-\d{2}$/u.test(text)) {
      if (timeZone === null) return { wanted: needsZone };
      try {
        return { value: { date: text, at: startOfDate(text, timeZone) } };
      } catch {
        return { wanted: `a date of the calendar` };
      }
    }
    const read = instant(text, unit);
    if ('value' in read) return { value: { date: read.value.slice(0, 10), at: read.value } };
    return {
      wanted:
        timeZone === null ? read.wanted : `a date as YYYY-MM-DD, or ${read.wanted.replace(/^a /u, 'a ')}`,
    };
  };
}

function offsetInstant(text: string, timeZone: string | null): ReturnType<Read<string>> {
  try {
    const instant = Temporal.Instant.from(text);
    if (timeZone !== null) return { value: isoText(instant.toZonedDateTimeISO(timeZone)) };
    const offset = /(?:Z|[+-]\d{2}:\d{2})$/u.exec(text)?.[0] ?? 'Z';
    return { value: isoText(instant.toZonedDateTimeISO(offset === 'Z' ? 'UTC' : offset)) };
  } catch {
    return { wanted: 'a date and time of the calendar' };
  }
}

function localInstant(text: string, timeZone: string, wanted: string): ReturnType<Read<string>> {
  let plain: Temporal.PlainDateTime;
  try {
    plain = Temporal.PlainDateTime.from(text, { overflow: 'reject' });
  } catch {
    return { wanted };
  }
  const [earlier, later] = (['earlier', 'later'] as const).map((disambiguation) =>
    plain.toZonedDateTime(timeZone, { disambiguation }),
  );
  if (earlier === undefined || later === undefined) return { wanted };
  if (earlier.epochMilliseconds === later.epochMilliseconds) return { value: isoText(earlier) };
  const shown = plain.toPlainTime().toString({ smallestUnit: 'minute' });
  if (earlier.toPlainDateTime().equals(plain)) {
    return {
      wanted: `a time with its offset: the clock of ${timeZone} shows ${shown} twice that day. Maybe ${isoText(earlier)} or ${isoText(later)} is meant`,
    };
  }
  return {
    wanted: `a time that the clock shows: in ${timeZone} it passes over ${shown} that day. Maybe ${isoText(later)} is meant`,
  };
}

function isoText(time: Temporal.ZonedDateTime): string {
  return time.toString({ timeZoneName: 'never', smallestUnit: 'second' });
}
