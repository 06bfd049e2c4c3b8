// What moved pours and other changes would do to the whole plan, before anything is stored: nothing here writes.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { type PlanChange, planChange } from '../plan/plan-changes.ts';
import { changedSource } from './changed-source.ts';
import { factsOf } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { readJobSource } from './job-source.ts';
import { planDifference } from './plan-difference.ts';
import { planSummary } from './plan-summary.ts';
import { query } from './procedure.ts';
import { code, date, instant, step } from './shapes.ts';
import { shownWhatif } from './shown-whatif.ts';

/** Working days, later or (below zero) earlier; the time of day stays. */
export const move = z.strictObject({ pour: code, workingDays: z.int().min(-60).max(60) });

export const whatif = z.strictObject({
  /** The moves among the changes, of pours that have a date before and after. */
  moves: z.array(
    z.strictObject({
      pour: code,
      name: z.string(),
      workingDays: z.int(),
      finishBefore: instant,
      finishAfter: instant,
      /** The first shift in which its pieces can be stripped. */
      stripBefore: instant,
      stripAfter: instant,
      freeBefore: instant,
      freeAfter: instant,
    }),
  ),
  /** All that was asked about, in its order. */
  changes: z.array(planChange),
  before: planSummary,
  after: planSummary,
  /** Steps of the first two working days from `today` that are dropped or added. */
  today: date,
  droppedSteps: z.array(step),
  addedSteps: z.array(step),
  ...planDifference,
});

export const planWhatif = query({
  name: 'plan.whatif',
  input: z.strictObject({
    job: code,
    moves: z.array(move).max(20).default([]),
    /** Besides the moves, in the order given. */
    changes: z.array(planChange).max(60).default([]),
    today: date.optional(),
    now: instant.optional(),
  }),
  output: whatif,
  run: async (book, { job: jobCode, moves, changes, today, now }) => {
    if (moves.length + changes.length === 0)
      return refuse('no-change', 'Nothing is changed: there is no move and no change.', { field: 'changes' });
    const source = await readJobSource(book, jobCode, now);
    if (!source.ok) return source;
    const all: PlanChange[] = [...moves.map((each) => ({ kind: 'move' as const, ...each })), ...changes];
    const changed = changedSource(source.value, all);
    if (!changed.ok) return changed;
    const before = planJob(factsOf(source.value));
    if (!before.ok) return before;
    const after = planJob(factsOf(changed.value));
    if (!after.ok) return after;
    return answer(shownWhatif(before.value, after.value, all, today ?? source.value.job.planFrom));
  },
});
