// What `calc plan` is asked and what it answers: the shape of the reuse plan at every door.
// Rules that need more than one field (unknown codes, from after to) are refused by check-input.ts.
import { Temporal } from 'temporal-polyfill';
import { z } from 'zod';
import { fixedChoice, instruction } from './choices.ts';
import { shiftsInput } from './shifts.ts';

const instant = z
  .string()
  .regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d([.,]\d{1,9})?)?(Z|[+-]\d\d(:?\d\d)?)$/u, {
    error: (issue) =>
      `"${String(issue.input)}" is not an ISO 8601 instant with offset, as 2026-03-02T07:00:00-05:00`,
    abort: true,
  })
  .refine(isInstant, { error: (issue) => `"${String(issue.input)}" is not an instant of the calendar` })
  .meta({ format: 'date-time', description: 'ISO 8601 with offset' });

const code = z.string().min(1);
/** Pieces: at most a million to a line, so that sums stay whole. */
const quantity = z.int().min(0).max(1_000_000);
/** Stock may be a number that stands for plenty. */
const stocked = z.int().min(0).max(1_000_000_000);
const pieces = z.record(code, quantity);
/** Hours, at most as many as ten years have. */
const hours = z.number().min(0).max(100_000);
/** Minor units of money, per hour or day; parts of a unit are allowed in a rate. */
const money = z.number().min(0).max(1e12);

const componentInput = z.strictObject({
  code,
  stock: z.union([stocked, z.array(z.strictObject({ from: instant, quantity: stocked }))]).meta({
    description: 'Pieces there are; as a list, the level from each instant on, 0 before the first',
  }),
  hirePerDay: money.nullable().meta({ description: 'null: cannot be hired' }),
});

const designInput = z.strictObject({ code, pieces, assembleH: hours, breakDownH: hours });

const turnInput = z.strictObject({
  id: code,
  design: code,
  from: instant,
  to: instant,
  built: z.boolean().optional(),
});

const looseInput = z.strictObject({ id: code, pieces, from: instant, to: instant });

const turnaroundInput = z.strictObject({
  flyOnH: hours,
  regangBaseH: hours,
  regangPerPieceH: z.union([hours, z.record(code, hours)]),
  cleanH: hours.optional(),
  regangH: z.array(z.strictObject({ from: code, to: code, hours })).optional(),
});

export const planInput = z.strictObject({
  components: z.array(componentInput),
  designs: z.array(designInput),
  turns: z.array(turnInput),
  loose: z.array(looseInput).optional(),
  turnaround: turnaroundInput,
  labourPerH: money,
  crew: z.number().positive().max(10_000).optional(),
  shifts: shiftsInput.optional(),
  improveSeconds: z.number().min(0).max(3600).optional(),
  improveSteps: z.int().min(0).optional(),
  seed: z.int().optional(),
  told: z.array(instruction).optional().meta({ description: 'What the crew was told' }),
  changePerInstruction: money.optional().meta({
    description: 'What each told instruction that the plan changes adds to its cost, in minor units',
  }),
  start: z
    .array(z.strictObject({ turns: z.array(code) }))
    .optional()
    .meta({ description: 'Runs of a plan known before, to begin from; what no longer fits is left out' }),
  fixed: z.array(fixedChoice).optional().meta({ description: 'Choices of a person, obeyed' }),
});

export type PlanInput = z.output<typeof planInput>;

const whole = z.int();

const shortfall = z.strictObject({
  component: code,
  from: z.string(),
  to: z.string(),
  quantity: whole,
  turns: z.array(z.string()),
  loose: z.array(z.string()),
});

export const planAnswer = z.strictObject({
  runs: z.array(z.strictObject({ turns: z.array(z.string()) })),
  shortfalls: z.array(shortfall),
  cost: z.strictObject({
    labour: whole,
    hire: whole,
    /** Where something was told: the changed instructions at their price, part of the total. */
    changes: whole.optional(),
    total: whole,
    unmet: whole,
  }),
  /** Where something was told: the instructions that the plan changes. */
  changed: z.array(instruction).optional(),
  bound: whole,
  gapPercent: z.number().min(0),
  proven: z.boolean(),
  milliseconds: z.number().min(0),
});

export type PlanAnswer = z.output<typeof planAnswer>;
export type Shortfall = z.output<typeof shortfall>;

function isInstant(text: string): boolean {
  try {
    return Temporal.Instant.from(text).epochMilliseconds > -Infinity;
  } catch {
    return false;
  }
}
