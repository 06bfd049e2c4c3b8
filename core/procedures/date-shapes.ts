// Shapes of the answers about dates: what holds a pour back, what a date changes in the whole plan.
import { z } from 'zod';
import { code, date, finding, instant, shortfall } from './shapes.ts';

export const heldBackShape = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('first-day'), until: instant }),
  z.strictObject({ kind: z.literal('after'), pour: code, until: instant }),
  z.strictObject({ kind: z.literal('stands-on'), pour: code, until: instant }),
  z.strictObject({ kind: z.literal('gate'), name: z.string(), who: z.string(), until: instant }),
]);

export const dateEffectsShape = {
  newShortfalls: z.array(shortfall),
  changedShortfalls: z.array(z.strictObject({ before: shortfall, after: shortfall })),
  goneShortfalls: z.array(shortfall),
  costChangeCents: z.int(),
  /** Piece-days that are short and cannot be hired, more or (below zero) fewer. */
  unmetChange: z.int(),
  /** Told instructions changed, more or fewer. */
  toldChange: z.int(),
  /** Days on which the crew has more work than hours, new or fuller than before; person-hours. */
  overfullDays: z.array(z.strictObject({ date, hoursNeeded: z.number(), hoursThere: z.number() })),
  /** The same of cranes, in minutes, and of the places on the ground. */
  fullCranesAndPads: z.array(
    z.strictObject({
      kind: z.enum(['crane', 'pads']),
      date,
      crane: code.nullable(),
      needed: z.number(),
      there: z.number(),
    }),
  ),
  /** Stops and cautions that were not there before. */
  findings: z.array(finding),
  /** In how many of these ways it is worse; shortfalls that grew among them. */
  breaks: z.int().min(0),
};
