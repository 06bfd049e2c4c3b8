// Trucks as entered, and what is loaded on one: stacks along the deck, the last on the first off.
import { z } from 'zod';
import {
  componentCode,
  grams,
  moment,
  paperId,
  person,
  placeCode,
  remark,
  somePieces,
} from './paper-shapes.ts';

const lengthNm = z.int().min(1).max(Number.MAX_SAFE_INTEGER);

export const truckText = z.strictObject({
  name: z.string().trim().min(1).max(80),
  payloadGrams: grams.min(1),
  deckLengthNm: lengthNm,
  deckWidthNm: lengthNm,
  /** Of a stack above the deck. */
  stackHeightNm: lengthNm,
});
export interface Truck extends z.output<typeof truckText> {
  readonly code: string;
}

export const loadText = z.strictObject({
  truck: z.string().max(40),
  /** From the cab backwards; in a stack from the deck upwards. */
  stacks: z.array(
    z.strictObject({
      fromCabNm: z.int().min(0),
      lengthNm,
      layers: z.array(
        z.strictObject({
          what: z.union([
            z.strictObject({ component: componentCode, quantity: somePieces }),
            z.strictObject({ container: placeCode }),
            z.strictObject({ gang: placeCode }),
          ]),
          weightGrams: grams,
          heightNm: lengthNm,
          /** Stops in the order in which they are reached, from 1. */
          stop: z.int().min(1).max(50),
        }),
      ),
    }),
  ),
  leavesAt: moment.nullable(),
  tiedDownBy: person.nullable(),
  remark: remark.nullable(),
});
export interface TruckLoad extends z.output<typeof loadText> {
  readonly id: string;
  /** The note it carries; null for a load without one. */
  readonly paper: string | null;
  readonly version: number;
}
export const truckLoadId = paperId;
