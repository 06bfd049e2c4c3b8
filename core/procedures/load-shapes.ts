// Trucks and loads as doors speak of them.
import { z } from 'zod';
import { loadStack, loadText, truckLoadId, truckText } from '../yard/truck.ts';
import { code, lengthNm } from './shapes.ts';

export const truckShape = truckText.extend({ code });

export const loadId = truckLoadId;

export const loadShape = loadText.extend({
  id: loadId,
  /** The note it carries. */
  paper: z.string().min(1).max(64).nullable(),
  /** That of the load which was edited; 0 for a new one. */
  version: z.int().min(0),
});

/** What is to go: pieces, or a container with what is in it, or a gang laid down; and at which stop it comes off. */
const stop = z.int().min(1).max(50);
export const toSend = z.union([
  z.strictObject({ component: code, quantity: z.int().min(1).max(100_000), stop }),
  z.strictObject({ container: code, stop }),
  z.strictObject({ gang: code, stop }),
]);
export type ToSend = z.output<typeof toSend>;

export const loadFigures = {
  truck: truckShape,
  stacks: z.array(loadStack),
  weightGrams: z.int(),
  /** From the cab to the end of the last stack; the width of the widest row; the highest stack. */
  usedLengthNm: lengthNm,
  usedWidthNm: lengthNm,
  highestNm: lengthNm,
  /** In the order in which things come off; loaded the other way round. Numbers of the stack, from 1, and the level on it. */
  unloading: z.array(z.strictObject({ stop: z.int(), stack: z.int(), level: z.int() })),
};

/** Of components, containers and gangs that are spoken of, by their codes. */
export const thingNames = z.record(z.string(), z.string());
