// The ways out of one shortfall, each planned anew over the whole job, the cheapest first.
import { z } from 'zod';
import { answer, type Answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { readJobFacts } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';
import { query } from './procedure.ts';
import { waysOf } from './remembered-ways.ts';
import { code, instant } from './shapes.ts';
import { shownShortfalls } from './shown-plan.ts';
import { waysAnswer } from './ways-shapes.ts';

export const shortfallWays = query({
  name: 'shortfall.ways',
  input: z.strictObject({ job: code, component: code, from: instant, now: instant.optional() }),
  output: waysAnswer,
  run: async (book, { job, component, from, now }) => {
    const facts = await readJobFacts(book, job, now);
    if (!facts.ok) return facts;
    const plan = planJob(facts.value);
    if (!plan.ok) return plan;
    const shortfall = shownShortfalls(plan.value).find((each) => each.id === `${component}@${from}`);
    if (shortfall === undefined)
      return refuse('no-such-shortfall', `Nothing of ${component} becomes short at ${from}.`, {
        field: 'from',
        hint: 'Maybe the plan has changed since.',
      });
    const others = await planOthers(book, job, now);
    if (!others.ok) return others;
    const { nowMs } = facts.value.yard;
    return answer(waysOf({ plan: plan.value, shortfall, others: others.value, nowMs }));
  },
});

/** Other jobs that have pieces planned to come; the others have nothing that this job does not count itself. */
export async function planOthers(
  book: BookReader,
  job: string,
  now: string | undefined,
): Promise<Answer<readonly JobPlan[]>> {
  const others: JobPlan[] = [];
  for (const { code: other } of await book.jobs()) {
    if (other === job) continue;
    const facts = await readJobFacts(book, other, now);
    if (!facts.ok) return facts;
    const plan = planJob(facts.value);
    // What is wrong with another job's plan is said there.
    if (plan.ok) others.push(plan.value);
  }
  return answer(others);
}
