// The moment of an ISO text as a number, by which movements are put in order: texts with different
// offsets do not sort by time.
import { Temporal } from 'temporal-polyfill';

const form = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,3})?)?(Z|[+-]\d\d:\d\d)$/u;

/** Milliseconds since 1970 of ISO 8601 with offset; null where the text is none, or names no real day. */
export function momentMs(text: string): number | null {
  if (!form.test(text)) return null;
  try {
    return Temporal.Instant.from(text).epochMilliseconds;
  } catch {
    return null;
  }
}
