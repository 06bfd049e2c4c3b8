// A refusal of the core with its field named as a form of this screen names it.
import { Refused } from '../../../client/refused.ts';

/** @param named the form's own name for a field of the core; the same where it has none */
export function atForm(error: Refused | null, named: (field: string) => string): Refused | null {
  if (error === null || error.field === undefined) return error;
  const { code, message, hint, field } = error;
  return new Refused({ code, message, field: named(field), ...(hint === undefined ? {} : { hint }) });
}
