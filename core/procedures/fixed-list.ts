// What people have fixed on a job: since when, whether the plan can obey it, and what it costs: the plan with it less the
// plan without it.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { type FixedChoice, fixedChoice } from '../plan/choices.ts';
import type { PlanInput } from '../plan/contract.ts';
import { planReuse, splitFixedOf } from '../plan/plan-reuse.ts';
import { choiceTurns, turnsOfChoice } from './choice-shapes.ts';
import { readJobFacts } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

export const fixedList = query({
  name: 'fixed.list',
  input: z.strictObject({ job: code, now: instant.optional() }),
  output: z.strictObject({
    job: code,
    fixed: z.array(
      z.strictObject({
        id: z.string(),
        choice: fixedChoice,
        ...choiceTurns,
        since: instant.nullable(),
        who: z.string().nullable(),
        /** Why no plan can obey it; null where this one does. */
        whyNot: z.string().nullable(),
        /** What the plan costs more with it than without it; null where it cannot be obeyed. */
        costCents: z.int().nullable(),
        /** Pieces that are short for a day and cannot be hired, more with it than without it. */
        unmetMore: z.int(),
      }),
    ),
  }),
  run: async (book, { job, now }) => {
    const facts = await readJobFacts(book, job, now);
    if (!facts.ok) return facts;
    const plan = planJob(facts.value);
    if (!plan.ok) return plan;
    const entries = await book.jobEntries(job, 'fixed-choice');
    const reasons = reasonsAgainst(plan.value);
    return answer({
      job,
      fixed: entries.map(({ id, entry, entered }) => {
        const whyNot = reasons.get(JSON.stringify(entry)) ?? null;
        const more = whyNot === null ? costOf(plan.value, entry) : { costCents: null, unmetMore: 0 };
        const [since, who] = [entered?.at ?? null, entered?.who ?? null];
        return { id, choice: entry, ...turnsOfChoice(plan.value, entry), since, who, whyNot, ...more };
      }),
    });
  },
});

function reasonsAgainst({ input, facts }: JobPlan): ReadonlyMap<string, string> {
  const split = splitFixedOf({ ...input, fixed: [...facts.planning.fixed] });
  return new Map(
    split.ok ? split.value.impossible.map((each) => [JSON.stringify(each.choice), each.message]) : [],
  );
}

/** The plan without the choice may begin from the one with it, so that it is never dearer. */
function costOf({ input, answer: plan }: JobPlan, choice: FixedChoice) {
  const without = planReuse(withoutChoice(input, choice, plan.runs), () => 0);
  if (!without.ok) return { costCents: null, unmetMore: 0 };
  return {
    costCents: plan.cost.total - without.value.cost.total,
    unmetMore: plan.cost.unmet - without.value.cost.unmet,
  };
}

function withoutChoice(
  input: PlanInput,
  choice: FixedChoice,
  start: NonNullable<PlanInput['start']>,
): PlanInput {
  const key = JSON.stringify(choice);
  return { ...input, fixed: (input.fixed ?? []).filter((each) => JSON.stringify(each) !== key), start };
}
