// Moments as people type them into a cell: "6 Mar 14:00", "2026-03-06 14:00", "14:00" on the day there was,
// "6 Mar" at the time there was, "2:30 pm". What could be two moments, or none, is refused with words.
import { Temporal } from 'temporal-polyfill';
import { type Answer, answer, refuse } from '../../core/answer.ts';

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const hint = 'Maybe write it like 6 Mar 14:00 or 2026-03-06 14:00.';

/**
 * Reads a date, a time, or both, on the wall clock of a time zone.
 * @param current the instant that stands there now: it lends the day, the time or the year that is not typed
 * @returns ISO 8601 with the zone's offset; refuses when-ambiguous, when-unreadable, when-weekday, when-not-on-clock
 */
export function readWhen(text: string, current: string, timeZone: string): Answer<string> {
  const now = Temporal.Instant.from(current).toZonedDateTimeISO(timeZone);
  const words = text
    .trim()
    .toLowerCase()
    .replaceAll(/[,\s]+/gu, ' ');
  if (/\d\s*\/\s*\d/u.test(words))
    return refuse('when-ambiguous', `"${text.trim()}" can be read as day and month or month and day.`, {
      hint,
    });
  const time = readTime(words);
  const rest = (time === undefined ? words : words.replace(time.read, ' ')).replaceAll('t ', ' ').trim();
  const day = rest === '' ? undefined : readDay(rest, now.toPlainDate());
  if ((rest !== '' && day === undefined) || (rest === '' && time === undefined) || time?.wrong === true)
    return refuse('when-unreadable', `"${text.trim()}" cannot be read as a date and time.`, { hint });
  const date = day?.date ?? now.toPlainDate();
  if (day?.weekday !== undefined && day.weekday !== date.dayOfWeek)
    return refuse('when-weekday', `${dayWords(date)} is not a ${capital(weekdays[day.weekday - 1] ?? '')}.`, {
      hint: 'Maybe leave the weekday out: the date decides.',
    });
  return onClock(date.toPlainDateTime(time?.time ?? now.toPlainTime()), timeZone);
}

function onClock(local: Temporal.PlainDateTime, timeZone: string): Answer<string> {
  try {
    const zoned = local.toZonedDateTime(timeZone, { disambiguation: 'reject' });
    return answer(zoned.toString({ timeZoneName: 'never', smallestUnit: 'second' }));
  } catch {
    const words = `${dayWords(local.toPlainDate())} ${local.toPlainTime().toString({ smallestUnit: 'minute' })}`;
    return refuse('when-not-on-clock', `${words} is not on the clock once: it changes that night.`, {
      hint: 'Maybe write a time an hour earlier or later.',
    });
  }
}

interface ReadTime {
  readonly read: string;
  readonly time: Temporal.PlainTime;
  readonly wrong?: boolean;
}

function readTime(words: string): ReadTime | undefined {
  const found =
    /(?:^|[\st])(?:at )?(\d{1,2}):(\d{2})(?::00)?(?: ?(am|pm|a\.m\.|p\.m\.))?(?=$|\s)/u.exec(words) ??
    /(?:^|\s)(?:at )?(\d{1,2})(?:) ?(am|pm|a\.m\.|p\.m\.)(?=$|\s)/u.exec(words);
  if (found === null) return undefined;
  const half = found.at(-1)?.startsWith('p') ? 'pm' : found.at(-1)?.startsWith('a') ? 'am' : undefined;
  const minute = found.length === 4 ? Number(found[2]) : 0;
  const typed = Number(found[1]);
  const hour = half === undefined ? typed : (typed % 12) + (half === 'pm' ? 12 : 0);
  const wrong = hour > 23 || minute > 59 || (half !== undefined && (typed < 1 || typed > 12));
  if (wrong) return { read: found[0], time: Temporal.PlainTime.from('00:00'), wrong };
  return { read: found[0], time: new Temporal.PlainTime(hour, minute) };
}

interface ReadDay {
  readonly date: Temporal.PlainDate;
  readonly weekday?: number;
}

function readDay(words: string, near: Temporal.PlainDate): ReadDay | undefined {
  const iso = /^(\d{4})-(\d{2})-(\d{2})$/u.exec(words);
  if (iso !== null) {
    const date = dateOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
    return date === undefined ? undefined : { date };
  }
  const parts = words.replaceAll('.', ' ').split(/\s+/u).filter(Boolean);
  const weekday = weekdays.indexOf((parts[0] ?? '').slice(0, 3)) + 1;
  if (weekday > 0 && (parts[0] ?? '').length >= 3) parts.shift();
  const month = parts.findIndex((part) => part.length >= 3 && months.includes(part.slice(0, 3)));
  const numbers = parts.filter((_, index) => index !== month).map((part) => Number(part));
  if (month < 0 || numbers.some((value) => !Number.isInteger(value))) return undefined;
  const monthNumber = months.indexOf((parts[month] ?? '').slice(0, 3)) + 1;
  const [day, year, ...more] = numbers;
  if (day === undefined || more.length > 0 || (year !== undefined && year < 1000)) return undefined;
  const date = year === undefined ? nearest(monthNumber, day, near) : dateOf(year, monthNumber, day);
  if (date === undefined) return undefined;
  return weekday > 0 ? { date, weekday } : { date };
}

/** The year is the one that brings the date nearest to the one that stood there. */
function nearest(month: number, day: number, near: Temporal.PlainDate): Temporal.PlainDate | undefined {
  const dates = [near.year, near.year - 1, near.year + 1].flatMap((year) => dateOf(year, month, day) ?? []);
  const apart = (date: Temporal.PlainDate): number => Math.abs(near.until(date).days);
  return dates.reduce<Temporal.PlainDate | undefined>(
    (best, date) => (best === undefined || apart(date) < apart(best) ? date : best),
    undefined,
  );
}

function dateOf(year: number, month: number, day: number): Temporal.PlainDate | undefined {
  try {
    return Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' });
  } catch {
    return undefined;
  }
}

function dayWords(date: Temporal.PlainDate): string {
  return `${date.day} ${capital(months[date.month - 1] ?? '')} ${date.year}`;
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
