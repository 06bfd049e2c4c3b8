// What a pick is checked with, as people enter it: the crane with its chart, and how one gang is to be slung
// and where it comes from and goes to.
import { z } from 'zod';

const grams = z.int().min(0);
const lengthNm = z.int();
const positiveNm = z.int().min(1);
const text = z.string().trim().max(200);

/** What a crane carries at its radii, rising; whatever always hangs on it is `deductGrams`. */
export const crane = z.strictObject({
  code: z.string().trim().min(1).max(40),
  name: z.string().trim().min(1).max(80),
  chart: z
    .array(z.strictObject({ radiusNm: positiveNm, capacityGrams: z.int().min(1) }))
    .min(1)
    .max(200),
  deductGrams: grams,
  /** Percent of the chart's value from which the weight must be proven, and from which the site refuses. */
  cautionPercent: z.number().gt(0).max(100),
  stopPercent: z.number().gt(0).max(100),
  /** Metres a second; null where nobody has entered it. */
  windLimitMps: z.number().gt(0).max(100).nullable(),
  /** Whose limit it is: the crane maker's, the site's. */
  windWhose: text,
});

export type Crane = z.output<typeof crane>;

/** How one gang is picked. */
export const pickSetup = z.strictObject({
  rigging: z.discriminatedUnion('by', [
    /** From the horizontal. */
    z.strictObject({ by: z.literal('angle'), angleDeg: z.number().gt(0).max(90) }),
    /** From the hooks on the gang to the crane's. */
    z.strictObject({ by: z.literal('legs'), legLengthNm: positiveNm }),
  ]),
  /** Slings and shackles. */
  slingsGrams: grams,
  /** What one leg of the sling may pull at any angle, by its tag; absent: not entered and not checked. */
  legCapacityGrams: z.exactOptional(z.int().min(1)),
  /** Rigging that shares the load evenly among more than two hooks, by name; its weight is added. */
  equalisingGear: z.strictObject({ name: text.min(1), weightGrams: grams }).nullable(),
  /** Share of the gang's weight added for concrete left on it. */
  concreteLeftOn: z.number().min(0).max(1),
  /** From lying face down on the ground, or from standing. */
  pickedUpFrom: z.enum(['flat', 'standing']),
  crane: z.string().max(40).nullable(),
  pickUpRadiusNm: lengthNm.min(1).nullable(),
  setRadiusNm: lengthNm.min(1).nullable(),
  /** Metres a second expected, and who says so. */
  windMps: z.number().min(0).max(100).nullable(),
  windSource: text,
});

export type PickSetup = z.output<typeof pickSetup>;

/**
 * What a pick begins with. Common practice, no source: slings at 60 degrees. All else is left open, so that nothing is
 * taken for entered.
 */
export const nothingEntered: PickSetup = {
  rigging: { by: 'angle', angleDeg: 60 },
  slingsGrams: 0,
  equalisingGear: null,
  concreteLeftOn: 0,
  pickedUpFrom: 'flat',
  crane: null,
  pickUpRadiusNm: null,
  setRadiusNm: null,
  windMps: null,
  windSource: '',
};
