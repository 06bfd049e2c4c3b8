// The core writes instants in its sentences as ISO 8601; people read them by the clock of the job.
import { timeWords } from './time-words.ts';

/** Instants inside a sentence of the core, as people say them. */
export function withSpokenInstants(text: string, timeZone: string): string {
  const words = timeWords(timeZone);
  return text.replaceAll(
    /\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:\d{2})/gu,
    (instant) => words.full(instant),
  );
}
