// What moved pours and other changes would do to the whole plan, before anything is stored: nothing here writes.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { type PlanChange, planChange } from '../plan/plan-changes.ts';
import { changedSource } from './changed-source.ts';
import { factsOf } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { readJobSource } from './job-source.ts';
import { shownWhatif } from './shown-whatif.ts';
import { query } from './procedure.ts';
import { code, cost, date, finding, instant, shortfall, step } from './shapes.ts';

/** Working days, later or (below zero) earlier; the time of day stays. */
export const move = z.strictObject({ pour: code, workingDays: z.int().min(-60).max(60) });

const summary = z.strictObject({ cost, boundCents: z.int(), shortfalls: z.array(shortfall) });

export const whatif = z.strictObject({
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
  before: summary,
  after: summary,
  /** Shortfalls that are new, gone, or of another size. Matched by component and overlapping time. */
  newShortfalls: z.array(shortfall),
  goneShortfalls: z.array(shortfall),
  changedShortfalls: z.array(z.strictObject({ before: shortfall, after: shortfall })),
  costChangeCents: z.int(),
  /** Steps of the first two working days from `today` that are dropped or added. */
  today: date,
  droppedSteps: z.array(step),
  addedSteps: z.array(step),
  /** Gangs that now go somewhere else, or are built otherwise. */
  rerouted: z.array(z.strictObject({ turn: z.string(), pour: code, before: z.string(), after: z.string() })),
  /** Gangs held longer because a moved pour keeps them: turn and new end. */
  heldLonger: z.array(z.strictObject({ turn: z.string(), pour: code, design: code, until: instant })),
  /** Whom to call: gates of the moved pours with their promised dates. */
  call: z.array(z.strictObject({ who: z.string(), about: z.string(), pour: code, promised: date })),
  findings: z.array(finding),
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
    return answer(shownWhatif(before.value, after.value, moves, today ?? source.value.job.planFrom));
  },
});
