// Plans a job and stores the plan, so that it can be looked up and compared later.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { readJobFacts } from './job-facts.ts';
import { improvedPlan } from './improved-plan.ts';
import { planInputOfJob, planJob } from './job-plan.ts';
import { shownPlan } from './shown-plan.ts';
import { command } from './procedure.ts';
import { code, commandId, instant, planned } from './shapes.ts';

export const planMake = command({
  name: 'plan.make',
  input: z.strictObject({
    commandId,
    job: code,
    improveSeconds: z.number().min(0).max(600).optional(),
    now: instant.optional(),
  }),
  output: z.strictObject({
    planId: z.string(),
    job: code,
    madeAt: instant,
    runs: z.array(z.strictObject({ run: z.int(), turns: z.array(z.string()) })),
    ...planned,
  }),
  run: async (book, { commandId: id, job: jobCode, improveSeconds, now }, { at }) => {
    const facts = await readJobFacts(book, jobCode, now);
    if (!facts.ok) return facts;
    // Made beforehand by a door that has threads; where it was not, it is made here.
    if (improveSeconds !== undefined) await improvedPlan(planInputOfJob(facts.value, improveSeconds));
    const plan = planJob(facts.value, improveSeconds);
    if (!plan.ok) return plan;
    await book.putPlan({ id, job: jobCode, madeAt: at, input: plan.value.input, answer: plan.value.answer });
    return answer({
      planId: id,
      job: jobCode,
      madeAt: at,
      runs: plan.value.runs.map((run, index) => ({
        run: index + 1,
        turns: run.turns.map((each) => each.id),
      })),
      ...shownPlan(plan.value),
    });
  },
});
