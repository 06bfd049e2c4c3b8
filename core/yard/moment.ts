// The moment of an ISO text as a number, by which movements are put in order: texts with different offsets do not
// sort by time. By plain arithmetic, since a long ledger asks for it some hundred thousand times.

const form = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.(\d{1,3}))?)?(?:Z|([+-])(\d\d):(\d\d))$/u;

const daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];
const daysTo1970 = 719_162;

/** Milliseconds since 1970 of ISO 8601 with offset; null where the text is none, or names no real day. */
export function momentMs(text: string): number | null {
  const parts = form.exec(text);
  if (parts === null) return null;
  const part = (index: number): number => Number(parts[index] ?? 0);
  const day = dayNumber(part(1), part(2), part(3));
  const [hours, minutes, offsetHours, offsetMinutes] = [part(4), part(5), part(9), part(10)];
  if (day === null || hours > 23 || minutes > 59 || part(6) > 60) return null;
  if (offsetHours > 23 || offsetMinutes > 59) return null;
  // A leap second is the one before it, as everybody's clocks have it.
  const seconds = Math.min(part(6), 59);
  const ms = Number((parts[7] ?? '').padEnd(3, '0'));
  const offset = (offsetHours * 60 + offsetMinutes) * (parts[8] === '-' ? -1 : 1);
  return (((day * 24 + hours) * 60 + minutes - offset) * 60 + seconds) * 1000 + ms;
}

/** Days since 1970 of a date of the calendar; null where there is no such day. */
function dayNumber(year: number, month: number, day: number): number | null {
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const before = daysBeforeMonth[month - 1];
  const after = daysBeforeMonth[month];
  if (before === undefined || after === undefined) return null;
  if (day < 1 || day > after - before + (isLeap && month === 2 ? 1 : 0)) return null;
  const past = year - 1;
  const leapDays = Math.floor(past / 4) - Math.floor(past / 100) + Math.floor(past / 400);
  return past * 365 + leapDays - daysTo1970 + before + (isLeap && month > 2 ? 1 : 0) + day - 1;
}
