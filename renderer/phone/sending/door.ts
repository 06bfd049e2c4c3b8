// Calls of the page to the door it came from. What came of one is told apart by what may be done about it.
import type { KeptRefusal } from '../kept/kept.ts';

export type Outcome<T> =
  | { readonly came: 'answered'; readonly value: T }
  /** Looked at and not taken. */
  | { readonly came: 'refused'; readonly refusal: KeptRefusal }
  | { readonly came: 'signed-out' }
  /** No connection, or no answer in time: nobody knows whether it came in. */
  | { readonly came: 'unreachable' };

const waitMs = 15_000;

export async function callDoor<T>(name: string, input: unknown): Promise<Outcome<T>> {
  try {
    const response = await fetch(`/call/${name}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(input),
      signal: AbortSignal.timeout(waitMs),
    });
    if (response.status === 401) return { came: 'signed-out' };
    if (response.status >= 500 || response.status === 403) return { came: 'unreachable' };
    const answered = (await response.json()) as
      | { readonly ok: true; readonly value: T }
      | { readonly ok: false; readonly error: KeptRefusal };
    if (answered.ok) return { came: 'answered', value: answered.value };
    const { code, message, hint } = answered.error;
    return { came: 'refused', refusal: { code, message, ...(hint !== undefined && { hint }) } };
  } catch {
    return { came: 'unreachable' };
  }
}
