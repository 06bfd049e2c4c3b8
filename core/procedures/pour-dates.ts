// Three possible dates for a pour, each with what it breaks: every working day of four weeks from the earliest possible on
// is planned as a whole, and three of them are shown. Nothing is stored.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { chooseDates } from '../plan/dates/choose-dates.ts';
import { type PossibleDate, possibleDates } from '../plan/dates/possible-dates.ts';
import { msOf } from '../plan/local-time.ts';
import { changedSource } from './changed-source.ts';
import { aroundOf, shownHoldBack } from './date-facts.ts';
import { type ComparedPlan, comparedPlan, dateEffects } from './date-effects.ts';
import { dateEffectsShape, heldBackShape } from './date-shapes.ts';
import { factsOf } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { type JobSource, readJobSource } from './job-source.ts';
import { query } from './procedure.ts';
import { code, instant, pourTimes } from './shapes.ts';
import { shownTimes } from './shown-times.ts';
import { unknownPour } from './unknown.ts';

/** Four weeks of five days. */
const workingDays = 20;

export const pourDates = query({
  name: 'pour.dates',
  input: z.strictObject({ job: code, pour: code, now: instant.optional() }),
  output: z.strictObject({
    pour: code,
    /** Nobody has set its day: what a date changes is against the plan without the pour. */
    dateOpen: z.boolean(),
    /** What keeps it from the working day before the earliest; null: nothing. */
    heldBack: heldBackShape.nullable(),
    /** Pours it comes after that have no date themselves. */
    waitsForUndated: z.array(code),
    /** Working days that were planned. */
    looked: z.int(),
    dates: z.array(
      z.strictObject({
        merits: z.array(z.enum(['earliest', 'cheapest', 'breaks-nothing', 'breaks-least'])),
        /** The date that the pour has now. */
        isNow: z.boolean(),
        times: pourTimes,
        ...dateEffectsShape,
      }),
    ),
  }),
  run: async (book, { job: jobCode, pour: pourCode, now }) => {
    const source = await readJobSource(book, jobCode, now);
    if (!source.ok) return source;
    return datesOf(source.value, pourCode);
  },
});

function datesOf(source: JobSource, asked: string) {
  const pour = source.pours.find((each) => each.code === asked);
  if (pour === undefined) return unknownPour(asked, source.job.code);
  const facts = factsOf(source);
  const around = aroundOf(facts, asked);
  const { heldBack, dates } = possibleDates(pour, around, workingDays);
  if (dates.length === 0)
    return refuse('no-date', `No working day within two years lets pour ${pour.code} begin.`, {
      field: 'pour',
      hint: 'Maybe a gate is promised too late, or a pour before it has a date far off.',
    });
  const base = planJob(facts);
  if (!base.ok) return base;
  const before = comparedPlan(base.value);
  const weighed = [];
  for (const date of dates) {
    const one = weigh(source, before, date);
    if (!one.ok) return one;
    weighed.push(one.value);
  }
  const undated = new Set(facts.undatedPours.map((each) => each.code));
  const isOpen = undated.has(pour.code);
  return answer({
    pour: pour.code,
    dateOpen: isOpen,
    heldBack: heldBack === null ? null : shownHoldBack(heldBack, facts.job.timeZone),
    waitsForUndated: pour.after.filter((each) => undated.has(each)),
    looked: dates.length,
    dates: chooseDates(weighed).map(({ date: { times, effects }, merits }) => ({
      merits: [...merits],
      isNow: !isOpen && msOf(pour.finishAt) === times.finish,
      times: shownTimes(times, facts.job),
      ...effects,
    })),
  });
}

function weigh(source: JobSource, before: ComparedPlan, { pour, times }: PossibleDate) {
  const changed = changedSource(source, [{ kind: 'date', pour: pour.code, finishAt: pour.finishAt }]);
  if (!changed.ok) return changed;
  const plan = planJob(factsOf(changed.value));
  if (!plan.ok) return plan;
  const after = comparedPlan(plan.value);
  const effects = dateEffects(before, after);
  const { unmet, totalCents } = after.cost;
  return answer({ times, effects, breaks: effects.breaks, unmet, costCents: totalCents });
}
