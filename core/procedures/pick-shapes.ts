// How a checked pick is shown: weights line by line, hooks, sling, crane at both radii, findings, and where it is
// refused the split that works.
import { z } from 'zod';
import type { DesignGeometry } from '../gang/design.ts';
import type { PickCheck } from '../pick/pick-check.ts';
import type { Split } from '../pick/split.ts';
import { asData } from './as-data.ts';
import { finding, lengthNm } from './shapes.ts';
import { shownTakeOff, shownTakeOffShape } from './shown-takeoff.ts';

const grams = z.int();
const percent = z.number();
const point = z.strictObject({ xNm: lengthNm, yNm: lengthNm });
const verdict = z.enum(['refused', 'caution', 'nothing-found']);

const shownCheckShape = {
  verdict,
  weights: z.array(
    z.strictObject({
      group: z.enum([
        'panels',
        'hardware',
        'platform',
        'timber',
        'concrete',
        'hooks',
        'slings',
        'gear',
        'crane',
      ]),
      name: z.string(),
      component: z.string().nullable(),
      quantity: z.int().nullable(),
      weightGrams: grams,
      basis: z.enum(['catalogue', 'entered', 'allowance', 'not-entered']),
    }),
  ),
  gangGrams: grams,
  onHooksGrams: grams,
  onCraneGrams: grams,
  centreOfGravity: point,
  hooks: z.array(
    z.strictObject({
      xNm: lengthNm,
      yNm: lengthNm,
      loadGrams: grams,
      pullGrams: grams.nullable(),
      percent: percent.nullable(),
    }),
  ),
  hooksRequired: z.int().nullable(),
  hookCapacityGrams: grams.nullable(),
  hooksRatedFor: z.enum(['sling-tension', 'gang-weight']).nullable(),
  sling: z
    .strictObject({
      apex: point.nullable(),
      headroomNm: lengthNm.nullable(),
      legsNm: z.array(lengthNm).nullable(),
      angleDeg: z.number(),
      horizontalGrams: grams,
      legPercent: percent.nullable(),
    })
    .nullable(),
  flat: z
    .strictObject({ startShare: z.number(), startGrams: grams, governs: z.enum(['hanging', 'start']) })
    .nullable(),
  cranePlaces: z.array(
    z.strictObject({
      place: z.enum(['pick-up radius', 'set radius']),
      radiusNm: lengthNm,
      capacityGrams: grams.nullable(),
      percent: percent.nullable(),
    }),
  ),
  craneGoverns: z.enum(['pick-up radius', 'set radius']).nullable(),
  findings: z.array(finding),
};

export const shownPickShape = z.strictObject({
  ...shownCheckShape,
  /** The gang to draw, with its hooks where the pick has them. */
  drawn: z.strictObject(shownTakeOffShape),
  /** Null where nothing is refused. */
  split: z
    .discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('found'),
        extraPicks: z.int(),
        parts: z.array(
          z.strictObject({
            widthNm: lengthNm,
            heightNm: lengthNm,
            onCraneGrams: grams,
            verdict,
            /** Of the chart at the worse radius; null without a crane. */
            cranePercent: percent.nullable(),
          }),
        ),
      }),
      z.strictObject({ kind: z.literal('none') }),
      z.strictObject({ kind: z.literal('not-finished') }),
    ])
    .nullable(),
});

export function shownPick(
  check: PickCheck,
  split: Split | null,
  edges: DesignGeometry['edges'],
): z.input<typeof shownPickShape> {
  const { takeOff, ...shown } = check;
  return asData({
    ...shown,
    drawn: shownTakeOff(takeOff, edges),
    split:
      split?.kind === 'found'
        ? {
            kind: split.kind,
            extraPicks: split.extraPicks,
            parts: split.parts.map(({ check: part }) => ({
              widthNm: part.takeOff.widthNm,
              heightNm: part.takeOff.heightNm,
              onCraneGrams: part.onCraneGrams,
              verdict: part.verdict,
              cranePercent: worst(part.cranePlaces),
            })),
          }
        : split,
  });
}

function worst(places: PickCheck['cranePlaces']): number | null {
  const known = places.flatMap((place) => place.percent ?? []);
  return known.length === 0 ? null : Math.max(...known);
}
