// When pieces that are to clean are due back to ready: first in, first out from the moment at which they became so.
// A yard that has said how many it cleans in a working day works them off one after another in its shifts; one
// that has not takes the job's own clean hours, by the clock, for each quantity.

export interface ToClean {
  readonly quantity: number;
  /** Epoch milliseconds. */
  readonly sinceMs: number;
}

export interface ShiftStretch {
  readonly from: number;
  readonly to: number;
}

/** How fast a yard cleans. */
export type CleaningPace =
  | { readonly how: 'by-the-clock'; readonly cleanMs: number }
  | {
      readonly how: 'by-the-day';
      readonly perDay: number;
      /** The first shift that ends after a moment, and the one after that, and so on. */
      readonly shiftEndingAfter: (ms: number) => ShiftStretch;
    };

/** So many pieces of a lot that are clean together: those of one shift at its end. */
export interface DueBack<Lot> {
  readonly lot: Lot;
  readonly quantity: number;
  /** Epoch milliseconds; null where its time has passed and nobody has booked them clean, or it is years away. */
  readonly dueMs: number | null;
}

/** @param now nothing that is still dirty is clean before it */
export function cleaningQueue<Lot extends ToClean>(
  lots: readonly Lot[],
  pace: CleaningPace,
  now: number,
): readonly DueBack<Lot>[] {
  if (pace.how === 'by-the-clock')
    return lots.map((lot) => {
      const dueMs = lot.sinceMs + pace.cleanMs;
      return { lot, quantity: lot.quantity, dueMs: dueMs > now ? dueMs : null };
    });
  const hand = new CleaningHand(pace.perDay, pace.shiftEndingAfter);
  return [...lots]
    .sort((one, other) => one.sinceMs - other.sinceMs)
    .flatMap((lot) => hand.clean(lot, Math.max(lot.sinceMs, now)));
}

/**
 * One pair of hands: each piece takes the shift's length over the pieces of a day. Time within a shift is counted in
 * the shift's length times the pieces of a day, so that it stays whole; a piece is not left half clean overnight.
 */
class CleaningHand {
  readonly #perDay: number;
  readonly #shiftEndingAfter: (ms: number) => ShiftStretch;
  #shift: ShiftStretch = { from: -Infinity, to: -Infinity };
  /** Cleaned up to here in the shift at hand. */
  #at = 0;

  constructor(perDay: number, shiftEndingAfter: (ms: number) => ShiftStretch) {
    this.#perDay = perDay;
    this.#shiftEndingAfter = shiftEndingAfter;
  }

  clean<Lot extends ToClean>(lot: Lot, from: number): readonly DueBack<Lot>[] {
    const parts: DueBack<Lot>[] = [];
    let left = lot.quantity;
    if (this.#shift.to <= from) this.#turnTo(from);
    for (let shifts = 0; left > 0; shifts += 1) {
      if (shifts === mostShifts) return [...parts, { lot, quantity: left, dueMs: null }];
      const { from: begins, to: ends } = this.#shift;
      const length = ends - begins;
      this.#at = Math.max(this.#at, (from - begins) * this.#perDay);
      const quantity = Math.min(left, Math.max(0, Math.floor((length * this.#perDay - this.#at) / length)));
      this.#at += quantity * length;
      left -= quantity;
      if (quantity > 0) parts.push({ lot, quantity, dueMs: ends });
      if (left > 0) this.#turnTo(ends);
    }
    return parts;
  }

  #turnTo(ms: number): void {
    this.#shift = this.#shiftEndingAfter(ms);
    this.#at = 0;
  }
}

/** What would take longer is due on no day that is worth telling. */
const mostShifts = 1000;
