// Every shortfall of a job by the plan of this moment, the earliest first.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { tightest } from '../plan/tightest.ts';
import { found } from './by-code.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { shownShortfalls } from './shown-plan.ts';
import { query } from './procedure.ts';
import { code, instant, shortfall } from './shapes.ts';
import { decisionsOf, shownDecision } from './shortfall-decisions.ts';
import { yardNote, yardNotesOf } from './yard-notes.ts';

export const shortfallList = query({
  name: 'shortfall.list',
  input: z.strictObject({ job: code, now: instant.optional() }),
  output: z.strictObject({
    shortfalls: z.array(shortfall),
    /** What was decided of them. */
    decisions: z.array(shownDecision),
    /** Components with the fewest pieces to spare and no shortfall: the next to break. */
    tightest: z.array(
      z.strictObject({ component: code, name: z.string(), at: instant, held: z.int(), stock: z.int() }),
    ),
    /** What the yard changes for this plan. */
    yardNotes: z.array(yardNote),
    hireCents: z.int(),
    currency: z.string(),
  }),
  run: async (book, { job: jobCode, now }) => {
    const facts = await readJobFacts(book, jobCode, now);
    if (!facts.ok) return facts;
    const plan = planJob(facts.value);
    if (!plan.ok) return plan;
    const { job, components, planning } = facts.value;
    const tight = tightest(plan.value.input, plan.value.answer, howManyTight);
    if (!tight.ok) return tight;
    const shortfalls = shownShortfalls(plan.value);
    return answer({
      shortfalls,
      decisions: decisionsOf(shortfalls, planning.decisions),
      yardNotes: [...yardNotesOf(plan.value, shortfalls)],
      tightest: tight.value.map((each) => ({ ...each, name: found(components, each.component).name })),
      hireCents: plan.value.answer.cost.hire,
      currency: job.currency,
    });
  },
});

const howManyTight = 8;
