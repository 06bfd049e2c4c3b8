// The board out of a job's plan: its days with crew hours, its pours with what is open and what is short.
import { shiftsBetween } from '../plan/calendar.ts';
import { dateOfDay, dayOfDate, weekdayOfDay } from '../plan/days.ts';
import { instantText, localDate, msOf, zoneOf } from '../plan/local-time.ts';
import { gateNeededBy, pourFindings } from '../plan/pour-findings.ts';
import type { Pour } from '../plan/pours.ts';
import { hoursByDate } from '../plan/steps.ts';
import { asData } from './as-data.ts';
import { found } from './by-code.ts';
import type { JobPlan } from './job-plan.ts';
import { shownPlan } from './shown-plan.ts';
import { shownTimes } from './shown-times.ts';
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
  const { job, pours, designs } = plan.facts;
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
    findings: pourFindings(job, pour, pours, designs),
  };
}

/** Whole weeks, Monday first, from the first thing that happens (or the plan's first day) to the last. */
export function shownDays(plan: JobPlan, shortfalls: readonly ShownShortfall[]) {
  const { job } = plan.facts;
  const { steps } = plan;
  const times = [...plan.turnsOf.times.values()];
  const near = weakStretches(plan);
  const zone = zoneOf(job.timeZone);
  const moments = [
    zone.startMs(dayOfDate(job.planFrom)),
    ...steps.flatMap(({ from, to }) => [from, to]),
    ...times.map(({ free }) => free),
  ];
  const first = mondayOf(zone.dayOf(Math.min(...moments)));
  const last = mondayOf(zone.dayOf(Math.max(...moments))) + 6;
  const hours = hoursByDate(steps);
  const short = shortfalls.map(({ id, from, to }) => ({ id, from: msOf(from), to: msOf(to) }));
  return Array.from({ length: last - first + 1 }, (_, index) => {
    const day = first + index;
    const date = dateOfDay(day);
    const [from, to] = [zone.startMs(day), zone.startMs(day + 1)];
    const shift = shiftsBetween(from, to, job.shifts)[0];
    const shiftHours = shift === undefined ? 0 : (shift.to - shift.from) / 3_600_000;
    return {
      date,
      working: shift !== undefined,
      shift:
        shift === undefined
          ? null
          : { from: instantText(shift.from, job.timeZone), to: instantText(shift.to, job.timeZone) },
      crewHoursNeeded: (hours.get(date) ?? 0) * job.crew,
      crewHoursThere: shiftHours * job.crew,
      craneMinutesNeeded: null,
      craneMinutesThere: null,
      padPlacesNeeded: null,
      padPlacesThere: null,
      overloads: [],
      shortfalls: short.filter((each) => each.from < to && each.to > from).map(({ id }) => id),
      restsOnWeak: [
        ...new Set(near.filter((each) => each.from < to && each.to > from).map(({ component }) => component)),
      ],
    };
  });
}

function mondayOf(day: number): number {
  return day - (weekdayOfDay(day) - 1);
}
