// A refusal of the core as an error that the query cache can carry: code, message, hint, field.
import type { Answer, Refusal } from '../../core/answer.ts';

export class Refused extends Error {
  readonly code: string;
  readonly field: string | undefined;
  readonly hint: string | undefined;

  constructor(refusal: Refusal) {
    super(refusal.message);
    this.name = 'Refused';
    this.code = refusal.code;
    this.field = refusal.field;
    this.hint = refusal.hint;
  }
}

export function unwrap<T>(answer: Answer<T>): T {
  if (answer.ok) return answer.value;
  throw new Refused(answer.error);
}

/** Whatever was thrown, in words for a person. */
export function wordsOf(error: unknown): { readonly message: string; readonly hint?: string } {
  if (error instanceof Refused) {
    return error.hint === undefined
      ? { message: error.message }
      : { message: error.message, hint: error.hint };
  }
  return { message: error instanceof Error ? error.message : String(error) };
}
