// Dates for pours that have none, placed together beside everything that has a date, when somebody asks for it: never by
// itself, and nothing is stored. They are taken over by carrying out the changes that stand in the answer.
import { z } from 'zod';
import { answer, type Answer, never, refuse } from '../answer.ts';
import type { NotBefore } from '../plan/dates/placing.ts';
import { placePours, type PlacedPours } from '../plan/dates/place-pours.ts';
import { dateOfDay } from '../plan/days.ts';
import { planChange } from '../plan/plan-changes.ts';
import type { Pour } from '../plan/pours.ts';
import { changedSource } from './changed-source.ts';
import { comparedPlan, dateEffects } from './date-effects.ts';
import { shownHoldBack } from './date-facts.ts';
import { dateEffectsShape, heldBackShape } from './date-shapes.ts';
import { factsOf, type JobFacts } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';
import { readJobSource } from './job-source.ts';
import { placeAsk } from './place-ask.ts';
import { query } from './procedure.ts';
import { code, date, instant, pourTimes, quantity } from './shapes.ts';
import { shownTimes } from './shown-times.ts';
import { unknownPour } from './unknown.ts';

const notBeforeShape = z.discriminatedUnion('kind', [
  ...heldBackShape.options,
  /** That day the crew has no hours left for it. */
  z.strictObject({ kind: z.literal('crew'), date }),
  z.strictObject({ kind: z.literal('component'), component: code, missing: quantity, date }),
]);

export const pourPlace = query({
  name: 'pour.place',
  input: z.strictObject({
    job: code,
    /** Pours without a date. */
    pours: z.array(code).min(1).max(60),
    now: instant.optional(),
    seed: z.int().default(1),
  }),
  output: z.strictObject({
    placed: z.array(
      z.strictObject({
        pour: code,
        name: z.string(),
        times: pourTimes,
        /** What keeps it from the working day before; null: it could not be earlier. */
        notBefore: notBeforeShape.nullable(),
      }),
    ),
    /** No day was found for them. */
    unplaced: z.array(code),
    /** By when all are stripped, and a day before which that cannot be. */
    lastDate: date,
    boundDate: date,
    schedules: z.int(),
    /** More of a component than will ever be there: not heeded in the placing. */
    shortAnyway: z.array(
      z.strictObject({ pour: code, component: code, needed: quantity, there: z.int().min(0) }),
    ),
    /** What carries it out. */
    changes: z.array(planChange),
    /** Against the plan without these pours. */
    ...dateEffectsShape,
  }),
  run: async (book, { job: jobCode, pours, now, seed }) => {
    const source = await readJobSource(book, jobCode, now);
    if (!source.ok) return source;
    const facts = factsOf(source.value);
    const free = freePours(facts, pours);
    if (!free.ok) return free;
    const base = planJob(facts);
    if (!base.ok) return base;
    const ask = placeAsk(base.value, free.value, seed);
    if (!ask.ok) return ask;
    const placed = placePours(ask.value);
    return placed.ok ? shownPlacing(base.value, placed.value) : placed;
  },
});

function freePours({ source, undatedPours, job }: JobFacts, asked: readonly string[]): Answer<Pour[]> {
  const found: Pour[] = [];
  for (const [index, each] of [...new Set(asked)].entries()) {
    const field = `pours[${index}]`;
    const pour = undatedPours.find((one) => one.code === each);
    if (pour !== undefined) found.push(pour);
    else if (source.pours.some((one) => one.code === each))
      return refuse('has-date', `Pour ${each} has a date already.`, {
        field,
        hint: 'Maybe say first that its date is open.',
      });
    else return unknownPour(each, job.code, field);
  }
  return answer(found);
}

function shownPlacing(base: JobPlan, found: PlacedPours) {
  const { job, source } = base.facts;
  const changes = found.placed.map(({ pour }) => ({
    kind: 'date' as const,
    pour: pour.code,
    finishAt: pour.finishAt,
  }));
  const changed = changedSource(source, changes);
  if (!changed.ok) return changed;
  const plan = planJob(factsOf(changed.value));
  if (!plan.ok) return plan;
  const { placed, unplaced, shortAnyway, ...dates } = found;
  return answer({
    ...dates,
    placed: placed.map(({ pour, times, notBefore }) => ({
      pour: pour.code,
      name: pour.name,
      times: shownTimes(times, job),
      notBefore: notBefore === null ? null : shownNotBefore(notBefore, job.timeZone),
    })),
    unplaced: [...unplaced],
    shortAnyway: [...shortAnyway],
    changes,
    ...dateEffects(comparedPlan(base), comparedPlan(plan.value)),
  });
}

function shownNotBefore(why: NotBefore, timeZone: string) {
  switch (why.kind) {
    case 'crew':
      return { kind: why.kind, date: dateOfDay(why.day) };
    case 'component':
      return { kind: why.kind, component: why.component, missing: why.missing, date: dateOfDay(why.day) };
    case 'first-day':
    case 'after':
    case 'stands-on':
    case 'gate':
      return shownHoldBack(why, timeZone);
    default:
      return never(why);
  }
}
