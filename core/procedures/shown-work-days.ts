// The days of a plan's work in the shapes in which doors show them.
import { shiftsBetween } from '../plan/calendar.ts';
import { dayOfDate } from '../plan/days.ts';
import { instantText, zoneOf } from '../plan/local-time.ts';
import type { CraneDay } from '../plan/work/crane-days.ts';
import type { StepLabour } from '../plan/work/labour.ts';
import type { PadDay } from '../plan/work/pads.ts';
import { asData } from './as-data.ts';
import type { JobPlan } from './job-plan.ts';
import { jobWork } from './job-work.ts';

export function shownWorkDays(plan: JobPlan) {
  const { labour, crew, cranes, pads, overloads } = jobWork(plan);
  const { timeZone, shifts } = plan.facts.job;
  const zone = zoneOf(timeZone);
  const text = (ms: number): string => instantText(ms, timeZone);
  const labourOn = Map.groupBy(labour, ({ date }) => date);
  const cranesOn = Map.groupBy(cranes, ({ date }) => date);
  const padsOn = new Map(pads.map((day) => [day.date, day]));
  return crew.map(({ date, hoursNeeded, hoursThere }) => {
    const day = dayOfDate(date);
    const [from, to] = [zone.startMs(day), zone.startMs(day + 1)];
    const own = shiftsBetween(from, to, shifts).filter((shift) => shift.from >= from);
    return {
      date,
      working: own.length > 0,
      shifts: own.map((shift) => ({ from: text(shift.from), to: text(shift.to) })),
      crew: {
        needed: hoursNeeded,
        there: hoursThere,
        steps: joined(labourOn.get(date) ?? []),
      },
      cranes: (cranesOn.get(date) ?? []).map((each) => shownCrane(each, text)),
      pads: shownPads(padsOn.get(date)),
      overloads: overloads.filter((each) => each.date === date).map(({ id }) => id),
    };
  });
}

/** Like steps of one pour are one line. */
function joined(labour: readonly StepLabour[]) {
  const alike = Map.groupBy(labour, ({ step, pour, toPour }) => JSON.stringify([step, pour, toPour]));
  return [...alike.values()].flatMap(([first, ...rest]) => {
    if (first === undefined) return [];
    const { step, pour, toPour, rate } = first;
    const personHours = rest.reduce((sum, each) => sum + each.personHours, first.personHours);
    return [asData({ step, pour, toPour, personHours, rate })];
  });
}

function shownCrane(
  { crane, minutesNeeded, minutesThere, minutesOver, free, picks }: CraneDay,
  text: (ms: number) => string,
) {
  return {
    crane,
    minutesNeeded,
    minutesThere,
    minutesOver,
    free: free.map(({ from, to }) => ({ from: text(from), to: text(to) })),
    picks: picks.map(({ at, minutes, pick: { kind, pour, toPour, design } }) => ({
      at: at === null ? null : text(at),
      minutes,
      kind,
      pour,
      toPour,
      design,
    })),
  };
}

function shownPads(day: PadDay | undefined) {
  if (day === undefined) return null;
  const { needed, there, over, lying } = day;
  return { needed, there, over, lying: lying.map(({ use, turn, pour }) => ({ use, turn, pour })) };
}
