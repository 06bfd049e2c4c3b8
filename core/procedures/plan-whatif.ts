// What moving pours would change in the whole plan, before anything is stored: nothing here writes.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { movePours } from './move-pours.ts';
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
    moves: z.array(move).min(1).max(20),
    today: date.optional(),
    now: instant.optional(),
  }),
  output: whatif,
  run: async (book, { job: jobCode, moves, today, now }) => {
    const facts = await readJobFacts(book, jobCode, now);
    if (!facts.ok) return facts;
    const { job, pours } = facts.value;
    const moved = movePours(job, pours, moves);
    if (!moved.ok) return moved;
    const before = planJob(facts.value);
    if (!before.ok) return before;
    const after = planJob({ ...facts.value, pours: moved.value.pours });
    if (!after.ok) return after;
    return answer(shownWhatif(before.value, after.value, moves, today ?? job.planFrom));
  },
});
