// Ways out by more pieces: hired for the calendar days of the shortfall, or had from another job that does not need them
// then. Hire is paid by the day, as the plan reckons it.
import { dateOfDay } from '../plan/days.ts';
import { curvesOf } from '../plan/curves.ts';
import { instantText, localDate, msOf, zoneOf } from '../plan/local-time.ts';
import type { PlannedStock } from '../plan/plan-changes.ts';
import { workedDayFrom } from '../plan/working-days.ts';
import { dayWords } from '../sheets/day-words.ts';
import { leastSpare } from '../plan/ways/least-spare.ts';
import type { JobPlan } from './job-plan.ts';
import type { Group, WaysQuestion } from './ways-trial.ts';

interface Days {
  readonly from: string;
  readonly to: string;
  readonly count: number;
  readonly words: string;
}

/** Whole calendar days, the first and the last that the shortfall touches. */
export function daysOf({ plan, shortfall }: WaysQuestion): Days {
  const { timeZone } = plan.facts.job;
  const zone = zoneOf(timeZone);
  const [first, last] = [zone.dayOf(msOf(shortfall.from)), zone.dayOf(msOf(shortfall.to) - 1)];
  const count = last - first + 1;
  return {
    from: instantText(zone.startMs(first), timeZone),
    to: instantText(zone.startMs(last + 1), timeZone),
    count,
    words:
      count === 1
        ? dayWords(dateOfDay(first))
        : `${dayWords(dateOfDay(first))} to ${dayWords(dateOfDay(last))}, ${count} days`,
  };
}

export function hireWays(question: WaysQuestion): readonly Group[] {
  const { component, quantity, hireCents } = question.shortfall;
  if (hireCents === null) return [];
  const days = daysOf(question);
  const entry: PlannedStock = {
    kind: 'hire',
    component,
    quantity,
    from: days.from,
    to: days.to,
    costCents: hireCents,
    source: null,
    remark: null,
  };
  const text = `Hire ${quantity} ${component}, ${days.words}`;
  return [{ kind: 'hire', tries: [{ kind: 'hire', changes: [{ kind: 'stock', entry }], text }] }];
}

/** Pieces are held from the beginning of the shortfall on, assembling included. */
export function orderBy({ plan, shortfall, nowMs }: WaysQuestion) {
  const { job, planning } = plan.facts;
  const day = zoneOf(job.timeZone).dayOf(msOf(shortfall.from));
  const by = dateOfDay(workedDayFrom(day, -planning.settings.hireLeadDays, job.shifts));
  return { by, isOver: by < localDate(nowMs, job.timeZone) };
}

/**
 * Every job counts what the yard has. What another job has beyond that, because it is planned to come for it, can be
 * had from it where its own plan leaves as much to spare.
 */
export function transferWays(question: WaysQuestion): readonly Group[] {
  const { component, quantity } = question.shortfall;
  const days = daysOf(question);
  return question.others.flatMap((other): Group[] => {
    if (spareOf(other, component, days) < quantity) return [];
    const source = `job ${other.facts.job.code}`;
    const entry: PlannedStock = {
      kind: 'transfer',
      component,
      quantity,
      from: days.from,
      to: days.to,
      costCents: 0,
      source,
      remark: null,
    };
    const text = `Have ${quantity} ${component} from ${source}, ${days.words}`;
    return [{ kind: 'transfer', tries: [{ kind: 'transfer', changes: [{ kind: 'stock', entry }], text }] }];
  });
}

function spareOf(other: JobPlan, component: string, days: Days): number {
  const planned = other.facts.planning.plannedStock.filter((each) => each.component === component);
  const own = planned
    .filter(({ from, to }) => msOf(from) <= msOf(days.from) && (to === null || msOf(to) >= msOf(days.to)))
    .reduce((sum, each) => sum + each.quantity, 0);
  if (own <= 0) return 0;
  return Math.min(own, spareIn(other, component, days));
}

/** The fewest to spare by the plan of a job, 0 where its curves cannot be had. */
export function spareIn(
  { input, answer, facts }: JobPlan,
  component: string,
  span: { readonly from: string; readonly to: string },
): number {
  const curves = curvesOf(input, answer.runs);
  const held = curves.ok ? curves.value.find((each) => each.component === component) : undefined;
  return leastSpare(held?.demandHeldByPlan ?? [], facts.stock.get(component)?.levels ?? [], span);
}
