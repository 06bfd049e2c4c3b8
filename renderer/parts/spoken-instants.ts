// The core writes instants in its sentences as ISO 8601; people read them by the clock of the job.
import { dateWords, timeWords } from './time-words.ts';

const instants = /(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?(Z|[+-]\d{2}:\d{2})/gu;

/**
 * Instants inside a sentence of the core, as people say them: by the clock of a zone, or where none is known by the
 * clock of the offset that each is written with, which is that of its job.
 */
export function withSpokenInstants(text: string, timeZone?: string): string {
  const words = timeZone === undefined ? null : timeWords(timeZone);
  return text.replaceAll(instants, (instant: string, date: string, time: string, offset: string) => {
    if (words !== null) return words.full(instant);
    return `${dateWords(date)} ${time}${offset === 'Z' ? ' UTC' : ''}`;
  });
}
