// What a job sets for its planning: how far ahead the crew is told, what it costs to change that, labour by step,
// hours of the crane, places to assemble and clean, whom to call. Each has a figure to begin with; those without a
// source are marked so where they are shown.
import { z } from 'zod';

const name = z.string().trim().min(1).max(80);
const clockTime = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/u, 'A time of day is written as 07:00 to 23:59');
const lengthNm = z.int().min(0);

export const labourSteps = [
  'assemble',
  'set',
  'close',
  'strip',
  'clean',
  'fly-on',
  'regang',
  'break-down',
] as const;

/** Hours of one person. Unlike steps are never added into one rate. */
export const labourRate = z.strictObject({
  step: z.enum(labourSteps),
  unit: z.enum(['h/m2', 'h/ft2', 'h/gang', 'h/piece']),
  personHours: z.number().min(0).max(1000),
  /** Whose rate it is: the site's own record, the firm's, a handbook's. */
  owner: name,
  /** Where it is from; null for a default without a source. */
  source: z.string().trim().max(200).nullable(),
});
export type LabourRate = z.output<typeof labourRate>;

/** When the crane works for the forms, before other bookings are taken off. */
export const craneHours = z.strictObject({
  crane: z.string().trim().min(1).max(40),
  days: z.array(z.int().min(1).max(7)),
  start: clockTime,
  end: clockTime,
  minutesPerPick: z.number().min(1).max(240),
});
export type CraneHours = z.output<typeof craneHours>;

/** A stretch of ground where gangs are assembled or cleaned; a place takes one gang. */
export const pad = z.strictObject({
  code: z.string().trim().min(1).max(40),
  name,
  use: z.enum(['assemble', 'clean', 'both']),
  places: z.int().min(1).max(200),
  /** The crane that reaches it and at what radius; null where that is not known. */
  reach: z.strictObject({ crane: z.string().trim().min(1).max(40), radiusNm: lengthNm }).nullable(),
});
export type Pad = z.output<typeof pad>;

export const planningSettings = z.strictObject({
  /** The shifts from now on that count as told, the one at work among them. */
  toldShifts: z.int().min(0).max(30),
  /** What each changed instruction is taken to cost, in minor units. */
  changeCents: z.int().min(0).max(100_000_000),
  labourRates: z.array(labourRate).max(60),
  cranes: z.array(craneHours).max(10),
  pads: z.array(pad).max(40),
  /** Gangs are laid down to be cleaned before they go on: two picks in place of one. */
  laidDown: z.boolean(),
  /** Working days from ordering pieces on hire until they are there. Common practice, no source. */
  hireLeadDays: z.int().min(0).max(60).default(3),
  phones: z.array(z.strictObject({ who: name, phone: z.string().trim().min(1).max(40) })).max(200),
});
export type PlanningSettings = z.output<typeof planningSettings>;

/** Common practice, no source. Without rates, cranes and pads those are not reckoned, and screens say so. */
export const firstPlanningSettings: PlanningSettings = {
  toldShifts: 2,
  changeCents: 10_000,
  labourRates: [],
  cranes: [],
  pads: [],
  laidDown: false,
  hireLeadDays: 3,
  phones: [],
};
