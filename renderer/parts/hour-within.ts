// The hour in which a moment lies, where its day is one of some days.
import { timeWords } from './time-words.ts';

/** @returns its beginning, ISO 8601; null where the day is none of them */
export function hourWithin(
  moment: string,
  days: readonly { readonly date: string }[],
  timeZone: string,
): string | null {
  const date = timeWords(timeZone).date(moment);
  const [first, last] = [days[0]?.date, days.at(-1)?.date];
  if (first === undefined || last === undefined || date < first || date > last) return null;
  const ms = Date.parse(moment);
  return new Date(ms - (ms % 3_600_000)).toISOString();
}
