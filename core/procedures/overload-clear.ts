// What single change clears an overload of a job's plan without making another one worse: the least first, each with its
// cost and what else it does. Nothing is stored; a change is carried out by plan.apply.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { planChange } from '../plan/plan-changes.ts';
import { clearOverload } from './clear-overload.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { jobWork } from './job-work.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { overloadShape, shownOverload } from './work-shapes.ts';

export const overloadClear = query({
  name: 'overload.clear',
  input: z.strictObject({ job: code, overload: z.string(), now: instant.optional() }),
  output: z.strictObject({
    overload: shownOverload,
    /** Empty where no single change clears it. */
    ways: z.array(
      z.strictObject({
        change: planChange,
        costChangeCents: z.int(),
        newShortfalls: z.int(),
        goneShortfalls: z.int(),
        changedShortfalls: z.int(),
        toldChanged: z.int(),
        /** Overloads that go with it, this one among them. */
        overloadsGone: z.array(z.string()),
      }),
    ),
    tried: z.int(),
    /** How many would clear it but make another overload. */
    moveTheClash: z.int(),
  }),
  run: async (book, { job, overload: id, now }) => {
    const facts = await readJobFacts(book, job, now);
    if (!facts.ok) return facts;
    const plan = planJob(facts.value);
    if (!plan.ok) return plan;
    const overload = jobWork(plan.value).overloads.find((each) => each.id === id);
    if (overload === undefined)
      return refuse('unknown-overload', `The plan of ${job} has no overload ${id}.`, {
        field: 'overload',
        hint: 'Maybe it is gone since the list was read.',
      });
    const cleared = clearOverload(plan.value, overload);
    if (!cleared.ok) return cleared;
    const { ways, tried, moveTheClash } = cleared.value;
    return answer({
      overload: overloadShape(overload),
      ways: ways.map((way) => ({ ...way, overloadsGone: [...way.overloadsGone] })),
      tried,
      moveTheClash,
    });
  },
});
