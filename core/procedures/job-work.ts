// The work of a job's plan by day, for the board, the screen of crew and crane, and the ways to clear an overload.
import { dateOfDay, dayOfDate, weekdayOfDay } from '../plan/days.ts';
import { zoneOf } from '../plan/local-time.ts';
import { type JobWork, workOf } from '../plan/work/job-work.ts';
import { found } from './by-code.ts';
import type { JobPlan } from './job-plan.ts';

const known = new WeakMap<JobPlan, JobWork>();

/** The same plan is asked about by several at once. */
export function jobWork(plan: JobPlan): JobWork {
  const before = known.get(plan);
  if (before !== undefined) return before;
  const made = workOfPlan(plan);
  known.set(plan, made);
  return made;
}

function workOfPlan(plan: JobPlan): JobWork {
  const { facts, turnsOf, runs, work } = plan;
  const { job, planning, designs, source } = facts;
  const turnDesigns = new Map(turnsOf.turns.map(({ id, design }) => [id, design]));
  return workOf({
    job,
    turnsOf,
    runs,
    work,
    settings: planning.settings,
    bookings: planning.craneBookings,
    cranes: source.cranes,
    pourFacts: planning.pourFacts,
    sizes: {
      areaNm2: (design) => found(designs, design).takeOff.areaNm2,
      pieces: (design) => found(designs, design).pieces,
      designOf: (turn) => found(turnDesigns, turn),
    },
    dates: planDates(plan),
  });
}

/** Whole weeks, Monday first, from the first thing that happens (or the plan's first day) to the last. */
export function planDates({ facts: { job }, steps, turnsOf }: JobPlan): readonly string[] {
  const zone = zoneOf(job.timeZone);
  const moments = [
    zone.startMs(dayOfDate(job.planFrom)),
    ...steps.flatMap(({ from, to }) => [from, to]),
    ...[...turnsOf.times.values()].map(({ free }) => free),
  ];
  const first = mondayOf(zone.dayOf(Math.min(...moments)));
  const last = mondayOf(zone.dayOf(Math.max(...moments))) + 6;
  return Array.from({ length: last - first + 1 }, (_, index) => dateOfDay(first + index));
}

function mondayOf(day: number): number {
  return day - (weekdayOfDay(day) - 1);
}
