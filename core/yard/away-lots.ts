// Pieces that a plan could count on and no longer can: lost, damaged, set apart, at another job.
import { never } from '../answer.ts';
import type { Lot } from './lots.ts';
import type { Movement } from './movement.ts';
import type { PieceState } from './piece-state.ts';

export type AwayState = 'to-repair' | 'quarantine' | 'scrapped' | 'lost' | 'other-job';

export interface AwayLot extends Lot {
  readonly component: string;
  readonly owner: string;
  readonly state: AwayState;
  /** The paper by which they left, its number as written on the movement, and where they were. */
  readonly paper: string | null;
  readonly noteNumber: string | null;
  readonly from: string;
}

export function isAwayState(state: PieceState): state is AwayState {
  switch (state) {
    case 'to-repair':
    case 'quarantine':
    case 'scrapped':
    case 'lost':
    case 'other-job':
      return true;
    case 'counted':
    case 'to-clean':
    case 'outside':
      return false;
    default:
      return never(state);
  }
}

/** Null where nothing that a plan could count on went away: opening figures, what came damaged from elsewhere. */
export function awayOf(
  movement: Movement,
  before: PieceState,
  after: AwayState,
  quantity: number,
  sinceMs: number,
): AwayLot | null {
  const isDelivered = movement.reason === 'delivery' || movement.reason === 'hire-on';
  if (quantity <= 0 || (before === 'outside' && !isDelivered)) return null;
  const { component, owner, from, paper, noteNumber, id } = movement;
  return { component, owner, state: after, quantity, sinceMs, movement: id, paper, noteNumber, from };
}
