// A wall or a column to be formed, and the proposals for it, as screens speak of them: lengths in whole
// nanometres. `calc fill` reads the same in lengths with units (fill-wall-input.ts).
import { z } from 'zod';
import { designGeometry } from '../gang/design.ts';
import { code, finding, instant, lengthNm } from './shapes.ts';

const length = lengthNm.min(1).max(1_000_000_000_000);
const lengthOrNone = lengthNm.min(0).max(1_000_000_000_000);

/** A turn with an angle other than 90 degrees is read, and refused by name. */
export const turnShape = z.union([
  z.enum(['left', 'right']),
  z.strictObject({ turn: z.enum(['left', 'right']), angleDeg: z.number().gt(0).lt(180) }),
]);

const endShape = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('free'), overhangNm: lengthOrNone }),
  z.strictObject({ kind: z.literal('old-concrete'), lapNm: lengthOrNone }),
  z.strictObject({ kind: z.literal('next-pour') }),
]);

/** What of a wall is out of scope; refused by name, so that nobody counts half of it. */
export const outOfScopeShape = z.array(z.enum(['single-sided', 'battered', 'curved'])).max(3);

export const wallShape = z.strictObject({
  legs: z
    .array(z.strictObject({ lengthNm: length }))
    .min(1)
    .max(12),
  /** Between the legs; of a closed wall one more. */
  turns: z.array(turnShape).max(12),
  closed: z.boolean(),
  start: endShape,
  end: endShape,
  thicknessNm: length,
  heightNm: length,
  freeboardNm: lengthOrNone,
  rowsNm: z.exactOptional(z.array(length).min(1).max(6)),
  insideCornerLegNm: z.exactOptional(lengthOrNone),
  outsideCornerLegNm: z.exactOptional(lengthOrNone),
  outOfScope: z.exactOptional(outOfScopeShape),
});

export const columnShape = z.strictObject({
  widthANm: length,
  widthBNm: length,
  heightNm: length,
  freeboardNm: lengthOrNone,
});

export const gangLimits = z.strictObject({
  lengthNm: z.exactOptional(length),
  heightNm: z.exactOptional(length),
  weightGrams: z.exactOptional(z.int().min(1)),
});

const side = z.enum(['A', 'B']);

export const wallProposal = z.strictObject({
  order: z.enum(['first', 'no-tie-stops', 'new-gangs']),
  score: z.strictObject({
    newFaceNm: lengthNm,
    holesAlone: z.int(),
    shortage: z.int(),
    fillerNm: lengthNm,
    panelCount: z.int(),
    asymmetry: z.int(),
  }),
  proven: z.boolean(),
  rowsNm: z.array(lengthNm),
  designs: z.array(
    z.strictObject({
      code,
      name: z.string(),
      isNew: z.boolean(),
      geometry: designGeometry,
      symmetrical: z.boolean(),
      widthNm: lengthNm,
      heightNm: lengthNm,
      weightGrams: z.int(),
      /** Of the half of a column, drawn unfolded: how far from its left edge the corner is. */
      foldNm: z.exactOptional(lengthNm),
    }),
  ),
  /** Empty for a column: its halves go round it. */
  gangs: z.array(
    z.strictObject({
      side,
      leg: z.int(),
      design: code,
      fromNm: lengthNm,
      widthNm: lengthNm,
      bottomNm: lengthNm,
    }),
  ),
  loose: z.array(
    z.strictObject({
      side: z.enum(['A', 'B', 'both']),
      purpose: z.enum([
        'inside-corner',
        'outside-corner',
        'stop-end',
        'closure',
        'gang-locks',
        'ties',
        'opening-joint',
      ]),
      component: z.string().nullable(),
      quantity: z.int(),
      where: z.string(),
      made: z.exactOptional(
        z.strictObject({
          widthNm: lengthNm,
          heightNm: lengthNm,
          areaM2: z.number(),
          backing: z.string().nullable(),
          backingPieces: z.int(),
          /** Null where there is no rule table of such pieces. */
          hours: z.number().nullable(),
        }),
      ),
    }),
  ),
  /** Tie holes without a partner opposite. */
  alone: z.array(
    z.strictObject({
      side,
      leg: z.int(),
      alongNm: lengthNm,
      heightNm: lengthNm,
      facesForm: z.boolean(),
    }),
  ),
  short: z.record(z.string(), z.int()),
  findings: z.array(finding),
});

export const wallProposals = z.strictObject({
  proposals: z.array(wallProposal),
  proven: z.boolean(),
  findings: z.array(finding),
});

/** What `fill.propose` is asked. */
export const proposeInput = z.strictObject({
  system: code,
  /** One of the two. */
  wall: z.exactOptional(wallShape),
  column: z.exactOptional(columnShape),
  /** Panels ready at these locations at that time; null: as if there were always enough. */
  useStock: z.strictObject({ locations: z.array(code).min(1).max(60), at: instant }).nullable(),
  /** May gangs stand in the wall that the book has designs of? */
  useDesigns: z.boolean(),
  /** Absent: the width that the rule table of adjustable locks allows. */
  maximumFillerNm: z.exactOptional(lengthOrNone),
  /** Absent: 0. */
  tieToleranceNm: z.exactOptional(lengthOrNone),
  limits: z.exactOptional(gangLimits),
  /** Proposals at most; absent: 3. */
  best: z.exactOptional(z.int().min(1).max(3)),
});
