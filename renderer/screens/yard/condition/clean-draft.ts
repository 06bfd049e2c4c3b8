// What was typed of pieces that were cleaned or repaired, as whole numbers: how many are done, and what they are then.
// Those of which nothing is said came out ready.
import { type Answer, answer, refuse } from '../../../../core/answer.ts';

export interface OutcomeDraft {
  readonly done: string;
  readonly readyHidden: string;
  readonly toRepair: string;
  readonly scrapped: string;
}

export interface Outcome {
  readonly quantity: number;
  readonly ready: number;
  readonly readyHidden: number;
  readonly toRepair: number;
  readonly scrapped: number;
}

/** The refusal names the field. */
export function readOutcome(draft: OutcomeDraft): Answer<Outcome> {
  const quantity = readPieces(draft.done, 'done');
  if (!quantity.ok) return quantity;
  if (quantity.value === 0)
    return refuse('quantity-missing', 'How many are done is missing.', { field: 'done' });
  const parts = { readyHidden: 0, toRepair: 0, scrapped: 0 };
  for (const field of ['readyHidden', 'toRepair', 'scrapped'] as const) {
    const read = readPieces(draft[field], field);
    if (!read.ok) return read;
    parts[field] = read.value;
  }
  const ready = quantity.value - parts.readyHidden - parts.toRepair - parts.scrapped;
  if (ready < 0)
    return refuse('does-not-add-up', `${quantity.value - ready} are told and ${quantity.value} are done.`, {
      field: 'done',
      hint: 'Maybe more were done.',
    });
  return answer({ quantity: quantity.value, ready, ...parts });
}

/** An empty field is none. */
export function readPieces(text: string, field: string): Answer<number> {
  const words = text.trim();
  if (words === '') return answer(0);
  if (!/^\d{1,9}$/u.test(words))
    return refuse('quantity-unreadable', `"${words}" is not a whole number of pieces.`, {
      field,
      hint: 'Maybe write it like 24, without commas.',
    });
  return answer(Number(words));
}

/** Hours as they are typed: 2, 2.5, 2,5. */
export function readHours(text: string, field: string): Answer<number> {
  const words = text.trim().replace(',', '.');
  if (!/^\d{1,4}(\.\d{1,2})?$/u.test(words))
    return refuse('hours-unreadable', `"${text.trim()}" is not a number of hours.`, {
      field,
      hint: 'Maybe write it like 2.5.',
    });
  return answer(Number(words));
}
