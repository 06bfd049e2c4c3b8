// A repair: so many pieces, what is wrong with them, the hours it takes, and parts taken from another piece.
import { z } from 'zod';
import { componentCode, moment, ownerCode, pieces, placeCode, remark, somePieces } from './paper-shapes.ts';

export const repairText = z.strictObject({
  component: componentCode,
  owner: ownerCode,
  quantity: somePieces,
  /** Where they are booked, to repair. */
  place: placeCode,
  fault: remark.min(1),
  hours: z.number().min(0).max(10_000).nullable(),
  /** When they are due back; null where nobody said: no plan counts on them. */
  dueAt: moment.nullable(),
  /** Pieces that are given up for their parts. */
  partsFrom: z.array(
    z.strictObject({ component: componentCode, owner: ownerCode, quantity: somePieces, place: placeCode }),
  ),
  /** Once done: how many came out ready, ready for hidden faces only, and scrapped. */
  done: z
    .strictObject({
      at: moment,
      ready: pieces,
      readyHidden: pieces,
      scrapped: pieces,
      hours: z.number().min(0),
    })
    .nullable(),
  remark: remark.nullable(),
});

export interface RepairJob extends z.output<typeof repairText> {
  readonly id: string;
  readonly state: 'open' | 'done' | 'dropped';
  readonly version: number;
}
