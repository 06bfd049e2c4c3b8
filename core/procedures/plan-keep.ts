// Keeps the runs of a plan that a search has found, with the bound it has proved: from now on the job's plan begins from
// them. Where the job has changed since the search began, what still fits is kept and its bound is not. Answers the
// runs there were before, which kept again take it back.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { withBound } from '../plan/proved-bound.ts';
import { planReuse } from '../plan/plan-reuse.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { command } from './procedure.ts';
import { code, commandId, cost, instant } from './shapes.ts';
import { questionMark } from './question-mark.ts';
import { shownCost } from './shown-plan.ts';

const runs = z.array(z.strictObject({ turns: z.array(z.string()) })).max(5000);

export const planKeep = command({
  name: 'plan.keep',
  input: z.strictObject({
    commandId,
    job: code,
    runs,
    /** What the search has proved that no plan costs less than, and of what question; counts while that is the job's. */
    boundCents: z.int().min(0).default(0),
    question: z.string().max(100).optional(),
    now: instant.optional(),
  }),
  output: z.strictObject({
    planId: z.string(),
    cost,
    /** Below zero, it is cheaper than the plan was before. */
    costChangeCents: z.int(),
    /** Whether the job is another one than the question was about: only what still fits was kept. */
    jobChanged: z.boolean(),
    before: z.strictObject({ runs, boundCents: z.int(), question: z.string() }),
  }),
  run: async (book, { commandId: id, job, runs: kept, boundCents, question: proved, now }, { at }) => {
    const facts = await readJobFacts(book, job, now);
    if (!facts.ok) return facts;
    const before = planJob(facts.value);
    if (!before.ok) return before;
    const { start: _start, ...question } = before.value.input;
    const input = { ...question, start: kept };
    const plan = planReuse(input, () => 0);
    if (!plan.ok) return plan;
    const mark = questionMark(question);
    const bounded = proved === mark ? withBound(plan.value, boundCents) : plan.value;
    await book.putPlan({ id, job, madeAt: at, input, answer: bounded });
    const was = before.value.answer;
    return answer({
      planId: id,
      cost: shownCost(plan.value.cost),
      costChangeCents: plan.value.cost.total - was.cost.total,
      jobChanged: proved !== undefined && proved !== mark,
      before: {
        runs: was.runs.map(({ turns }) => ({ turns: [...turns] })),
        boundCents: was.bound,
        question: mark,
      },
    });
  },
});
