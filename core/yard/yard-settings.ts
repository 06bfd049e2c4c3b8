// What a yard can set: how much it cleans in a day, when a figure is old, how counts are made, which spares a plan
// keeps back. Each has a figure to begin with; those without a source are marked so where they are shown.
import { z } from 'zod';

const rate = z.number().min(0).max(1);

export const yardSettings = z.strictObject({
  /** Pieces that can be cleaned in a working day; null where nobody has said: the job's own clean hours serve. */
  cleanedPerDay: z.int().min(1).max(1_000_000).nullable(),
  /** A figure older than this many days is old, and days that rest on it say so. */
  figureOldAfterDays: z.int().min(1).max(3650),
  /** Lines of a spot check. */
  spotCheckLines: z.int().min(1).max(500),
  blindCounts: z.boolean(),
  counters: z.union([z.literal(1), z.literal(2)]),
  /** The class of a component where it is set by hand: long lead times, trouble. */
  classes: z.record(z.string(), z.enum(['A', 'B', 'C'])),
  /** Pieces in a bundle, by component, where people count in bundles. */
  bundleSizes: z.record(z.string(), z.int().min(2).max(10_000)).default({}),
  /** Whether plans keep spares back from the ready stock. */
  keepSpares: z.boolean(),
  /** Losses and damage a turn that a component is taken to have until its own record says more, by kind of component. */
  defaultRates: z.record(z.string(), rate),
  /** Turns after which the own record of a component takes the place of the default. */
  turnsForOwnRate: z.int().min(1).max(10_000),
});
export type YardSettings = z.output<typeof yardSettings>;

/** Common practice, no source, but for the count classes, which are judged in count-class.ts. */
export const firstYardSettings: YardSettings = {
  cleanedPerDay: null,
  figureOldAfterDays: 30,
  spotCheckLines: 10,
  blindCounts: false,
  counters: 1,
  classes: {},
  bundleSizes: {},
  keepSpares: false,
  defaultRates: {
    lock: 0.05,
    'adjustable-lock': 0.05,
    'rail-bolt': 0.05,
    tie: 0.05,
  },
  turnsForOwnRate: 10,
};
