// How many spare pieces a plan would keep back of a component: its rate of loss and damage a turn, of the most pieces
// that its turns hold at once, rounded up. Whole numbers throughout, so that rounding up never adds a piece by itself.
import { never } from '../answer.ts';
import type { UsedRate } from './rates.ts';

export interface MostHeld {
  /** Most pieces that turns and loose turns hold at once, and at how many pours at most they stand at once. */
  readonly pieces: number;
  readonly pours: number;
}

export interface SpareLine {
  readonly component: string;
  readonly rate: UsedRate;
  readonly most: MostHeld;
  readonly spare: number;
}

export function spareOf(rate: UsedRate, most: MostHeld): number {
  switch (rate.basis) {
    case 'own':
      return rate.of === 0 ? 0 : shareUp(most.pieces, rate.worn, rate.of);
    case 'default':
      return shareUp(most.pieces, rate.millionths, 1_000_000);
    case 'default-per-set':
      return most.pours;
    case 'none':
      return 0;
    default:
      return never(rate);
  }
}

function shareUp(pieces: number, part: number, of: number): number {
  const product = BigInt(pieces) * BigInt(part);
  return Number((product + BigInt(of) - 1n) / BigInt(of));
}
