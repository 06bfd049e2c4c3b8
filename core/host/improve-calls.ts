// What the app asks of the host about looking for a better plan: start, how it stands, stop. One search at a time; it goes
// on beside everything else, and keeps nothing by itself.
import { z } from 'zod';
import { code, instant } from '../procedures/shapes.ts';

const planFigures = z.strictObject({
  totalCents: z.int(),
  unmet: z.int(),
  /** How many shortfalls, and how many told instructions it changes. */
  shortfalls: z.int(),
  changedTold: z.int(),
});
export type PlanFigures = z.output<typeof planFigures>;

export const improveState = z.strictObject({
  /** Null before the first search of this host. */
  search: z
    .strictObject({
      id: z.string(),
      job: code,
      startedAt: instant,
      /** Since it began, or until it ended. */
      seconds: z.number().min(0),
      /** After how many it ends by itself. */
      allowedSeconds: z.number(),
      /** `proven`: no plan costs less than its best; `over`: its time was up; `failed`: see `refusal`. */
      state: z.enum(['running', 'proven', 'over', 'stopped', 'failed']),
      refusal: z.string().nullable(),
      /** The plan that it began with; null until it is made. */
      before: planFigures.nullable(),
      best: planFigures.nullable(),
      /** No plan costs less. */
      boundCents: z.int(),
      gapPercent: z.number().min(0),
      /** A mark of the job as it was when the search began; `plan.keep` takes it with the bound. */
      question: z.string(),
      /** What `plan.keep` takes; once the search has ended. */
      runs: z.array(z.strictObject({ turns: z.array(z.string()) })).nullable(),
    })
    .nullable(),
});
export type ImproveState = z.output<typeof improveState>;

export const improveCalls = {
  'host.improve.state': { input: z.strictObject({}), output: improveState },
  /** Ends a search that is under way. */
  'host.improve.start': {
    input: z.strictObject({
      job: code,
      seconds: z.number().min(1).max(3600),
      now: instant.optional(),
    }),
    output: improveState,
  },
  /** With the best plan found until then. */
  'host.improve.stop': { input: z.strictObject({}), output: improveState },
} as const;
export type ImproveCallName = keyof typeof improveCalls;
