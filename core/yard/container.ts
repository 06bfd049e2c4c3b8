// Racks, bins, pallets, bundles: pieces themselves, counted, weighed and on hire, and places that hold pieces. What
// happened to one is a list of steps; the last one is how it stands.
import { z } from 'zod';
import { grams, placeCode, remark } from './paper-shapes.ts';

export const fillings = ['empty', 'part', 'full', 'unknown'] as const;

export const containerStepText = z.strictObject({
  /** The yard, site, rack or supplier where it stands. */
  place: placeCode,
  filling: z.enum(fillings),
  /** With its content, where it was weighed. */
  grossGrams: grams.nullable(),
  remark: remark.nullable(),
});

export interface ContainerStep extends z.output<typeof containerStepText> {
  readonly container: string;
  readonly number: number;
  readonly at: string;
  readonly who: string;
}

export interface Container {
  /** Its tag and the code of its location. */
  readonly code: string;
  /** Which piece it is itself, and whose. */
  readonly component: string;
  readonly owner: string;
  readonly last: ContainerStep;
}

export type Filling = (typeof fillings)[number];

/** How full a container is said to be after pieces went in or out of it: what nobody looked at is not called full. */
export function fillingAfter(before: Filling, holdsPieces: boolean, wentIn: boolean): Filling {
  if (!holdsPieces) return 'empty';
  if (wentIn) return before === 'empty' ? 'part' : before;
  return before === 'unknown' ? 'unknown' : 'part';
}
