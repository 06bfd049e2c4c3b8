// How every part of the core answers when a refusal is an expected outcome: as a value, never as a
// thrown error, so that an answer crosses processes unchanged. Exceptions are left for bugs.

/** A refusal that a person can act on: names and values stand in `message`, what may help in `hint`. */
export interface Refusal {
  readonly code: string;
  readonly message: string;
  readonly field?: string;
  readonly hint?: string;
}

export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: Refusal };

export function answer<T>(value: T): Answer<T> {
  return { ok: true, value };
}

export function refuse(
  code: string,
  message: string,
  more: { readonly field?: string; readonly hint?: string } = {},
): { readonly ok: false; readonly error: Refusal } {
  return { ok: false, error: { code, message, ...more } };
}

/** Makes a forgotten case of a union a compile error, and a bug that names the value at run time. */
export function never(value: never): never {
  throw new Error(`A case was forgotten: ${JSON.stringify(value)}`);
}
