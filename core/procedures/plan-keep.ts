// Keeps the runs of a plan that a search has found, with the bound it has proved: from now on the job's plan begins from
// them. Answers the runs there were before, which kept again take it back.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { withBound } from '../plan/proved-bound.ts';
import { planReuse } from '../plan/plan-reuse.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { command } from './procedure.ts';
import { code, commandId, cost, instant } from './shapes.ts';
import { shownCost } from './shown-plan.ts';

const runs = z.array(z.strictObject({ turns: z.array(z.string()) })).max(5000);

export const planKeep = command({
  name: 'plan.keep',
  input: z.strictObject({
    commandId,
    job: code,
    runs,
    /** What the search has proved that no plan costs less than; only counts while nothing of the job changes. */
    boundCents: z.int().min(0).default(0),
    now: instant.optional(),
  }),
  output: z.strictObject({
    planId: z.string(),
    cost,
    /** Below zero, it is cheaper than the plan was before. */
    costChangeCents: z.int(),
    before: z.strictObject({ runs, boundCents: z.int() }),
  }),
  run: async (book, { commandId: id, job, runs: kept, boundCents, now }, { at }) => {
    const facts = await readJobFacts(book, job, now);
    if (!facts.ok) return facts;
    const before = planJob(facts.value);
    if (!before.ok) return before;
    const { start: _start, ...question } = before.value.input;
    const input = { ...question, start: kept };
    const plan = planReuse(input, () => 0);
    if (!plan.ok) return plan;
    await book.putPlan({ id, job, madeAt: at, input, answer: withBound(plan.value, boundCents) });
    const was = before.value.answer;
    return answer({
      planId: id,
      cost: shownCost(plan.value.cost),
      costChangeCents: plan.value.cost.total - was.cost.total,
      before: { runs: was.runs.map(({ turns }) => ({ turns: [...turns] })), boundCents: was.bound },
    });
  },
});
