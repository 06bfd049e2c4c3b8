// The core's answers as the parts of this screen name them.
import type { z } from 'zod';
import type { pourList } from '../../../core/procedures/pour-list.ts';
import type { UnitSystem } from '../../../core/units/length.ts';

export type PourList = z.output<typeof pourList.output>;
export type PourRow = PourList['pours'][number];
export type Pour = PourRow['pour'];
export type PourSide = Pour['sides'][number];
export type Gate = Pour['gates'][number];
export type LooseLine = Pour['loose'][number];

/** What reading and printing a cell needs to know besides the pour. */
export interface CellContext {
  readonly timeZone: string;
  readonly system: UnitSystem;
}
