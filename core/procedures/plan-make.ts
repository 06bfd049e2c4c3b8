// Plans a job and stores the plan, so that it can be looked up and compared later.
import { z } from 'zod';
import { command } from './procedure.ts';
import { code, commandId, cost, instant, shortfall, step, turn } from './shapes.ts';

export const planMake = command({
  name: 'plan.make',
  input: z.strictObject({ commandId, job: code, improveSeconds: z.number().min(0).max(600).optional() }),
  output: z.strictObject({
    planId: z.string(),
    job: code,
    madeAt: instant,
    runs: z.array(z.strictObject({ run: z.int(), turns: z.array(z.string()) })),
    turns: z.array(turn),
    steps: z.array(step),
    shortfalls: z.array(shortfall),
    cost,
    boundCents: z.int(),
    gapPercent: z.number(),
    proven: z.boolean(),
    milliseconds: z.number(),
  }),
  run: () => Promise.reject(new Error('being built')),
});
