// Ways out of a shortfall in the shapes in which doors show them.
import { z } from 'zod';
import { planChange } from '../plan/plan-changes.ts';
import { code, cost, date, shortfall } from './shapes.ts';

export type ShownShortfall = z.input<typeof shortfall>;

/** A whole plan in the figures by which ways are compared. */
const wholePlan = z.strictObject({
  cost,
  /** Hire, trucks and so on of pieces that are planned to come, and the whole cost with them. */
  plannedCents: z.int(),
  allCents: z.int(),
  shortfalls: z.int(),
  changedTold: z.int(),
  /** Gangs that are assembled or there already. */
  gangs: z.int(),
});

/** A day that asks more than there is, and more than it did: hours of people and minutes of cranes too much; 0: none. */
export const overDay = z.strictObject({ date, crewHours: z.number(), craneMinutes: z.number() });

const kind = z.enum(['hire', 'slip', 'gang', 'strip', 'transfer', 'design', 'two-together']);

export const way = z.strictObject({
  id: z.string(),
  kind,
  changes: z.array(planChange).min(1),
  /** What is done, in words. */
  text: z.string(),
  /** The whole plan with it less the whole plan without, not counting this shortfall's own hire in the latter. */
  costCents: z.int(),
  before: wholePlan,
  after: wholePlan,
  newShortfalls: z.array(shortfall),
  goneShortfalls: z.array(shortfall),
  changedShortfalls: z.array(z.strictObject({ before: shortfall, after: shortfall })),
  /** At some moment something is short, or more of it, that was not before. */
  movesClash: z.boolean(),
  /** Told instructions that it changes and the plan as it is does not. */
  changedTold: z.int(),
  overDays: z.array(overDay),
  /** Strips at another criterion, for a named person to approve. */
  approval: z.array(z.strictObject({ pour: code, hoursBefore: z.number(), hours: z.number() })),
  /** The last day on which the pieces can be ordered, and whether that is over; null where nothing is hired. */
  order: z.strictObject({ by: date, isOver: z.boolean() }).nullable(),
  /** What is not certain about the cost or the way. */
  uncertain: z.array(z.string()),
});
export type Way = z.input<typeof way>;

/** Alike, but not in its place without the designer. */
export const nearItem = z.strictObject({
  component: code,
  name: z.string(),
  /** To spare all through the stretch. */
  spare: z.int(),
});

/** Why there is no way of a kind, or what was tried and how many were short even so. */
export const triedKind = z.strictObject({
  kind,
  tried: z.int(),
  ways: z.int(),
  why: z.string().nullable(),
});

export const waysAnswer = z.strictObject({
  shortfall,
  currency: z.string(),
  ways: z.array(way),
  ask: z.array(nearItem),
  /** Kind by kind. */
  tried: z.array(triedKind),
});
export type WaysAnswer = z.input<typeof waysAnswer>;
