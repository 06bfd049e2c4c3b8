// The board out of a job's plan: its days with crew hours, its pours with what is open and what is short.
import { shiftsBetween } from '../plan/calendar.ts';
import { dayOfDate } from '../plan/days.ts';
import { instantText, localDate, msOf, zoneOf } from '../plan/local-time.ts';
import { gateNeededBy } from '../plan/pour-findings.ts';
import type { Pour } from '../plan/pours.ts';
import { asData } from './as-data.ts';
import { found } from './by-code.ts';
import { findingsOfPour, foundFrom } from './findings-of-pour.ts';
import type { JobPlan } from './job-plan.ts';
import { planDates } from './job-work.ts';
import { shownPlan } from './shown-plan.ts';
import { shownTimes } from './shown-times.ts';
import { workByDate } from './shown-work.ts';
import { weakStretches } from './weak-stretches.ts';
import { yardNotesOf } from './yard-notes.ts';

type ShownShortfall = ReturnType<typeof shownPlan>['shortfalls'][number];

export function shownBoard(plan: JobPlan) {
  const { job, changeNumber } = plan.facts;
  const { code, name, timeZone, currency, units, crew, planFrom } = job;
  const shown = shownPlan(plan);
  return {
    job: { code, name, timeZone, currency, units, crew, planFrom },
    changeNumber,
    days: shownDays(plan, shown.shortfalls),
    yardNotes: [...yardNotesOf(plan, shown.shortfalls)],
    planFindings: [...plan.findings],
    undated: plan.facts.undatedPours.map((pour) => ({ code: pour.code, name: pour.name })),
    pours: plan.facts.pours.map((pour) => shownPour(plan, pour, shown.shortfalls)),
    ...shown,
  };
}

function shownPour(plan: JobPlan, pour: Pour, shortfalls: readonly ShownShortfall[]) {
  const { job } = plan.facts;
  const times = found(plan.turnsOf.times, pour.code);
  return {
    pour: asData(pour),
    times: shownTimes(times, job),
    openGates: pour.gates
      .filter((gate) => !gate.done)
      .map((gate) => ({
        name: gate.name,
        who: gate.who,
        before: gate.before,
        promised: gate.promised,
        late: gate.promised > localDate(gateNeededBy(times, gate), job.timeZone),
      })),
    shortfalls: shortfalls
      .filter(({ turns, loose }) => [...turns, ...loose].some((holder) => holder.pour === pour.code))
      .map(({ id }) => id),
    findings: findingsOfPour(foundFrom(plan.facts), pour),
  };
}

/** Whole weeks, Monday first, from the first thing that happens (or the plan's first day) to the last. */
export function shownDays(plan: JobPlan, shortfalls: readonly ShownShortfall[]) {
  const { job } = plan.facts;
  const near = weakStretches(plan);
  const zone = zoneOf(job.timeZone);
  const work = workByDate(plan);
  const short = shortfalls.map(({ id, from, to }) => ({ id, from: msOf(from), to: msOf(to) }));
  return planDates(plan).map((date) => {
    const day = dayOfDate(date);
    const [from, to] = [zone.startMs(day), zone.startMs(day + 1)];
    // A night that began the evening before belongs to that day.
    const shift = shiftsBetween(from, to, job.shifts).find((each) => each.from >= from);
    return {
      date,
      working: shift !== undefined,
      shift:
        shift === undefined
          ? null
          : { from: instantText(shift.from, job.timeZone), to: instantText(shift.to, job.timeZone) },
      ...work(date),
      shortfalls: short.filter((each) => each.from < to && each.to > from).map(({ id }) => id),
      restsOnWeak: [
        ...new Set(near.filter((each) => each.from < to && each.to > from).map(({ component }) => component)),
      ],
    };
  });
}
