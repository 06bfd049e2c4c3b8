// What a piece is to a plan, by where it lies and in which condition: pieces that a plan counts on, or the one
// reason for which it does not.
import { never } from '../answer.ts';
import { type Condition, isInHand, type LocationKind } from './movement.ts';

export const pieceStates = [
  'counted',
  'to-clean',
  'to-repair',
  'quarantine',
  'scrapped',
  'lost',
  'other-job',
  'outside',
] as const;
export type PieceState = (typeof pieceStates)[number];

export function pieceState(kind: LocationKind, condition: Condition): PieceState {
  if (isInHand(kind)) return stateInHand(condition);
  switch (kind) {
    case 'repair':
      // What lies in the shop is away, whatever its condition, until it is booked back.
      return condition === 'scrapped' || condition === 'quarantine' ? condition : 'to-repair';
    case 'other-job':
      return 'other-job';
    case 'scrap':
      return 'scrapped';
    case 'lost':
      return 'lost';
    case 'supplier':
    case 'opening':
      return 'outside';
    case 'yard':
    case 'rack':
    case 'site':
    case 'container':
    case 'gang':
    case 'pour':
      return 'counted';
    default:
      return never(kind);
  }
}

function stateInHand(condition: Condition): PieceState {
  switch (condition) {
    case 'ready':
    case 'ready-hidden':
      return 'counted';
    case 'to-clean':
    case 'to-repair':
    case 'quarantine':
    case 'scrapped':
      return condition;
    default:
      return never(condition);
  }
}
