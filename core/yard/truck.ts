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

/** What lies as one on a deck: a bundle of pieces, a container with what is in it, a gang laid down. */
const loadedThing = z.union([
  z.strictObject({ component: componentCode, quantity: somePieces }),
  z.strictObject({ container: placeCode }),
  z.strictObject({ gang: placeCode }),
]);

export const loadLayer = z.strictObject({
  what: loadedThing,
  weightGrams: grams,
  /** Along the deck. */
  lengthNm,
  /** Across the deck. */
  widthNm: lengthNm,
  /** With the bearers under it. */
  heightNm: lengthNm,
  /** Whether others may lie on it. */
  carries: z.boolean(),
  /** Stops in the order in which they are reached, from 1. */
  stop: z.int().min(1).max(50),
});
export type LoadLayer = z.output<typeof loadLayer>;

export const loadStack = z.strictObject({
  fromCabNm: z.int().min(0),
  fromLeftNm: z.int().min(0),
  /** From the deck upwards. */
  layers: z.array(loadLayer).min(1).max(60),
});
export type LoadStack = z.output<typeof loadStack>;

export const loadText = z.strictObject({
  truck: z.string().trim().min(1).max(40),
  /** From the cab backwards, side by side from the left. */
  stacks: z.array(loadStack).max(200),
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
