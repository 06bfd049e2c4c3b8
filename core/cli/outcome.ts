// What a command of the command line ends in: one JSON document and an exit code.
import type { Answer, Refusal } from '../answer.ts';

/** 0 done, 2 the input is refused or a check found something, 1 a bug or the machine failed. */
export interface Outcome {
  readonly document: unknown;
  readonly exitCode: 0 | 1 | 2;
}

/** Refusals that no other input would change: the machine, or the app itself, is in the way. */
const machineCodes: ReadonlySet<string> = new Set(['bug', 'disk-full', 'node-too-old', 'sqlite-not-loaded']);

export function done(document: unknown): Outcome {
  return { document, exitCode: 0 };
}

export function refused(error: Refusal, more: Readonly<Record<string, unknown>> = {}): Outcome {
  return { document: { error, ...more }, exitCode: machineCodes.has(error.code) ? 1 : 2 };
}

export function outcomeOf<T>(
  answered: Answer<T>,
  document: (value: T) => unknown = (value) => value,
): Outcome {
  return answered.ok ? done(document(answered.value)) : refused(answered.error);
}

export function bug(error: unknown): Outcome {
  const message = error instanceof Error ? error.message : String(error);
  return { document: { error: { code: 'bug', message } }, exitCode: 1 };
}
