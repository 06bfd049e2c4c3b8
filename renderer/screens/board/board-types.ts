// Names for the parts of the board's answer, so that files here say what they take.
import type { z } from 'zod';
import type { boardRead } from '../../../core/procedures/board-read.ts';
import type { curveRead } from '../../../core/procedures/curve-read.ts';
import type { planWhatif } from '../../../core/procedures/plan-whatif.ts';

export type Board = z.output<(typeof boardRead)['output']>;
export type BoardPour = Board['pours'][number];
export type BoardDay = Board['days'][number];
export type Turn = Board['turns'][number];
export type Step = Board['steps'][number];
export type Shortfall = Board['shortfalls'][number];
export type Whatif = z.output<(typeof planWhatif)['output']>;
export type Curves = z.output<(typeof curveRead)['output']>;

/** One working-day move of one pour, as the core takes it. */
export interface Move {
  readonly pour: string;
  readonly workingDays: number;
}
