// What changes do, as the difference of two whole plans: a fix that only moves the clash shows it.
import { dateOfDay, dayOfDate } from '../plan/days.ts';
import type { PlanChange } from '../plan/plan-changes.ts';
import { workedDayFrom } from '../plan/working-days.ts';
import { asData } from './as-data.ts';
import { found } from './by-code.ts';
import type { JobPlan } from './job-plan.ts';
import { comparedOf, differenceOf, type Shown } from './plan-difference.ts';
import { summaryOf } from './plan-summary.ts';
import { shownTimes } from './shown-times.ts';

type ShownStep = Shown['steps'][number];
type Move = Extract<PlanChange, { kind: 'move' }>;

/** @param today the date from which the near steps are compared, YYYY-MM-DD */
export function shownWhatif(before: JobPlan, after: JobPlan, changes: readonly PlanChange[], today: string) {
  const [was, is] = [comparedOf(before), comparedOf(after)];
  const nearEnd = nextWorkingDate(before, today);
  const near = (step: ShownStep): boolean => step.date >= today && step.date <= nearEnd;
  return {
    moves: changes.filter(isMove).flatMap((move) => shownMove(before, after, move)),
    changes: changes.map((each) => asData(each)),
    before: summaryOf(was),
    after: summaryOf(is),
    today,
    droppedSteps: without(was.shown.steps.filter(near), is.shown.steps),
    addedSteps: without(is.shown.steps.filter(near), was.shown.steps),
    ...differenceOf(was, is, changes),
  };
}

function isMove(change: PlanChange): change is Move {
  return change.kind === 'move';
}

/** None where the pour has no date, or is dropped by another change. */
function shownMove(before: JobPlan, after: JobPlan, { pour, workingDays }: Move) {
  const { job, pours } = before.facts;
  if (!before.turnsOf.times.has(pour) || !after.turnsOf.times.has(pour)) return [];
  const from = shownTimes(found(before.turnsOf.times, pour), job);
  const to = shownTimes(found(after.turnsOf.times, pour), job);
  return [
    {
      pour,
      name: pours.find((each) => each.code === pour)?.name ?? '',
      workingDays,
      finishBefore: from.finishAt,
      finishAfter: to.finishAt,
      stripBefore: from.stripFrom,
      stripAfter: to.stripFrom,
      freeBefore: from.freeAt,
      freeAfter: to.freeAt,
    },
  ];
}

/** The next working day after `today`: what is told to the crew for the two of them is what hurts to change. */
function nextWorkingDate({ facts: { job } }: JobPlan, today: string): string {
  return dateOfDay(workedDayFrom(dayOfDate(today), 1, job.shifts));
}

/** Steps of the one list that are not, in the same way, in the other. */
function without(steps: readonly ShownStep[], others: readonly ShownStep[]): ShownStep[] {
  const sign = ({ date, kind, pour, toPour, designs }: ShownStep): string =>
    JSON.stringify([date, kind, pour, toPour, designs]);
  const there = new Set(others.map(sign));
  return steps.filter((step) => !there.has(sign(step)));
}
