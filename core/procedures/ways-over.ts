// Days on which another plan asks more of the crew or of the cranes than is there, and more than the plan before it did.
import type { z } from 'zod';
import { loadsOf } from './changed-days.ts';
import type { JobPlan } from './job-plan.ts';
import type { overDay } from './ways-shapes.ts';

type Loads = ReturnType<typeof loadsOf>;
type Load = Loads extends ReadonlyMap<string, infer L> ? L : never;

export function overDays(before: Loads, after: JobPlan): z.input<typeof overDay>[] {
  return [...loadsOf(after)].flatMap(([date, load]) => {
    const was = before.get(date);
    const crewHours = moreOver(crewOver(load), was === undefined ? 0 : crewOver(was));
    const craneMinutes = moreOver(craneOver(load), was === undefined ? 0 : craneOver(was));
    return crewHours === 0 && craneMinutes === 0 ? [] : [{ date, crewHours, craneMinutes }];
  });
}

/** How much is too much now, where that is more than before. */
function moreOver(now: number, before: number): number {
  return now > before ? now : 0;
}

function crewOver({ crewHoursNeeded, crewHoursThere }: Load): number {
  return Math.max(0, Math.round((crewHoursNeeded - crewHoursThere) * 10) / 10);
}

function craneOver({ craneMinutesNeeded, craneMinutesThere }: Load): number {
  return Math.max(0, Math.round((craneMinutesNeeded ?? 0) - (craneMinutesThere ?? 0)));
}
