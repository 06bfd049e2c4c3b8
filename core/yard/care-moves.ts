// What becomes of pieces that are cleaned, repaired, and set apart, as movements: the parts add up to what was taken in
// hand, and what is scrapped goes to the scrap with two names.
import { type Answer, answer, refuse } from '../answer.ts';
import type { Condition, Movement, Reason } from './movement.ts';
import { checkSecondName } from './second-name.ts';

/** Pieces at one place, of one owner. */
export interface CareOf {
  readonly component: string;
  readonly owner: string;
  readonly location: string;
  readonly quantity: number;
}

export interface CareOutcome {
  readonly ready: number;
  readonly readyHidden: number;
  readonly toRepair: number;
  readonly scrapped: number;
}

export interface CareBooking {
  /** The command's id: its movements are numbered from it. */
  readonly id: string;
  readonly at: string;
  readonly who: string;
  readonly secondName?: string | undefined;
  readonly remark?: string | null | undefined;
  readonly paper: string | null;
  /** The location where what is scrapped goes; null where the book has none. */
  readonly scrap: string | null;
}

/**
 * Cleaned or repaired pieces in the conditions they came out in.
 * @param from the condition they were in, and why it ends
 * @param to where they are then, if not where they were
 * Codes: does-not-add-up, second-name, same-name, no-place.
 */
export function careMovements(
  of: CareOf,
  outcome: CareOutcome,
  from: { readonly condition: Condition; readonly reason: 'clean' | 'repair' },
  booking: CareBooking,
  to: string = of.location,
): Answer<readonly Movement[]> {
  const { ready, readyHidden, toRepair, scrapped } = outcome;
  const told = ready + readyHidden + toRepair + scrapped;
  if (told !== of.quantity)
    return refuse(
      'does-not-add-up',
      `${of.quantity} of ${of.component} were taken in hand and ${told} are told: ${ready} ready, ${readyHidden} ready for hidden faces, ${toRepair} to repair, ${scrapped} scrapped.`,
      { field: 'quantity', hint: 'Maybe some are still to do: enter only how many were done.' },
    );
  const refusal = checkSecondName(scrapped, booking.who, booking.secondName);
  if (refusal !== null) return { ok: false, error: refusal };
  const made = new MovementMaker(booking);
  made.add(of, ready, from.condition, 'ready', from.reason, to);
  made.add(of, readyHidden, from.condition, 'ready-hidden', from.reason, to);
  made.add(of, toRepair, from.condition, 'to-repair', from.reason, to);
  return scrapped === 0 ? answer(made.movements) : made.scrap(of, scrapped, from.condition);
}

/** Pieces given up for their parts. Codes: those of the scrap. */
export function donorMovements(
  donors: readonly (CareOf & { readonly condition: Condition })[],
  booking: CareBooking,
  first: number,
): Answer<readonly Movement[]> {
  const all = donors.reduce((sum, { quantity }) => sum + quantity, 0);
  const refusal = checkSecondName(all, booking.who, booking.secondName);
  if (refusal !== null) return { ok: false, error: refusal };
  const made = new MovementMaker(booking, first);
  for (const donor of donors) {
    const scrapped = made.scrap(donor, donor.quantity, donor.condition);
    if (!scrapped.ok) return scrapped;
  }
  return answer(made.movements);
}

class MovementMaker {
  readonly movements: Movement[] = [];
  readonly #booking: CareBooking;
  readonly #first: number;

  constructor(booking: CareBooking, first = 1) {
    this.#booking = booking;
    this.#first = first;
  }

  add(
    { component, owner, location }: CareOf,
    quantity: number,
    condition: Condition,
    conditionAfter: Condition,
    reason: Reason,
    to: string,
  ): void {
    if (quantity === 0) return;
    const { id, at, who, remark, paper, secondName } = this.#booking;
    const agreed = reason === 'scrap' ? `Agreed by ${secondName?.trim() ?? ''}.` : '';
    const words = [agreed, remark ?? ''].filter((each) => each !== '').join(' ');
    this.movements.push({
      id: `${id}-${this.#first + this.movements.length}`,
      component,
      quantity,
      owner,
      from: location,
      to,
      condition,
      conditionAfter,
      reason,
      at,
      who,
      noteNumber: null,
      remark: words === '' ? null : words,
      basis: null,
      basisDate: null,
      reverses: null,
      paper,
    });
  }

  scrap(of: CareOf, quantity: number, condition: Condition): Answer<readonly Movement[]> {
    const { scrap } = this.#booking;
    if (scrap === null)
      return refuse('no-place', 'The book has no location of kind scrap.', {
        field: 'scrapped',
        hint: 'Maybe enter one.',
      });
    this.add(of, quantity, condition, 'scrapped', 'scrap', scrap);
    return answer(this.movements);
  }
}
