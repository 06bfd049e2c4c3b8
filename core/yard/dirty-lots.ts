// Pieces that are to clean, and what their leaving that condition does to what a plan counts on.
import type { Lot } from './lots.ts';
import type { PieceState } from './piece-state.ts';

/** So many pieces more (or fewer, below zero) that a plan counts on from a moment on. */
export interface Change {
  readonly component: string;
  readonly atMs: number;
  readonly by: number;
}

export interface DirtyLot extends Lot {
  readonly component: string;
  readonly owner: string;
  readonly location: string;
  /** Of the movement that made them dirty. */
  readonly paper: string | null;
  /** Until when the plan holds them itself, as pieces of a turn: Infinity in a gang; null where it does not. */
  readonly heldUntilMs: number | null;
}

/** Held pieces count until the plan lets them go; from then on until they are ready they do not. */
export function exitChanges(lot: DirtyLot, atMs: number, to: PieceState): readonly Change[] {
  const { component, quantity, heldUntilMs } = lot;
  const isReady = to === 'counted';
  const joins = { component, atMs, by: quantity };
  if (heldUntilMs === null) return isReady ? [joins] : [];
  if (atMs <= heldUntilMs) return isReady ? [] : [{ component, atMs, by: -quantity }];
  const leaves = { component, atMs: heldUntilMs, by: -quantity };
  return isReady ? [leaves, joins] : [leaves];
}
