// Names for the parts of the board's answer, so that files here say what they take.
import type { Output } from '../../client/core.tsx';

export type Board = Output<'board.read'>;
export type BoardPour = Board['pours'][number];
export type BoardDay = Board['days'][number];
export type Turn = Board['turns'][number];
export type Step = Board['steps'][number];
export type Shortfall = Board['shortfalls'][number];
export type Whatif = Output<'plan.whatif'>;
export type Curves = Output<'curve.read'>;

/** One working-day move of one pour, as the core takes it. */
export interface Move {
  readonly pour: string;
  readonly workingDays: number;
}
