// Days on which two plans need, or have, another crew, crane or places on the ground.
import { z } from 'zod';
import { boardDay } from './board-read.ts';
import type { JobPlan } from './job-plan.ts';
import { planDates } from './job-work.ts';
import { workByDate } from './shown-work.ts';

const load = boardDay.pick({
  crewHoursNeeded: true,
  crewHoursThere: true,
  craneMinutesNeeded: true,
  craneMinutesThere: true,
  padPlacesNeeded: true,
  padPlacesThere: true,
});
type Load = z.output<typeof load>;

/** Null where the day lies outside that plan's weeks. */
export const changedDay = z.strictObject({
  date: boardDay.shape.date,
  before: load.nullable(),
  after: load.nullable(),
});

export type Loads = ReadonlyMap<string, Load>;

export function changedDays(was: Loads, is: Loads): z.input<typeof changedDay>[] {
  return [...new Set([...was.keys(), ...is.keys()])]
    .sort()
    .map((date) => ({ date, before: was.get(date) ?? null, after: is.get(date) ?? null }))
    .filter((day) => JSON.stringify(day.before) !== JSON.stringify(day.after))
    .filter((day) => needsSomething(day.before) || needsSomething(day.after));
}

export function loadsOf(plan: JobPlan): Loads {
  const work = workByDate(plan);
  return new Map(planDates(plan).map((date) => [date, loadOf(work(date))]));
}

function loadOf(day: Load): Load {
  return {
    crewHoursNeeded: rounded(day.crewHoursNeeded),
    crewHoursThere: rounded(day.crewHoursThere),
    craneMinutesNeeded: day.craneMinutesNeeded,
    craneMinutesThere: day.craneMinutesThere,
    padPlacesNeeded: day.padPlacesNeeded,
    padPlacesThere: day.padPlacesThere,
  };
}

/** To a thousandth of an hour: two sums of the same steps may differ in their last bit. */
function rounded(hours: number): number {
  return Math.round(hours * 1000) / 1000;
}

function needsSomething(day: Load | null): boolean {
  return (
    day !== null &&
    (day.crewHoursNeeded > 0 || (day.craneMinutesNeeded ?? 0) > 0 || (day.padPlacesNeeded ?? 0) > 0)
  );
}
