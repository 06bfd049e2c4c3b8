// A day's work against what is there, in the numbers that the board shows.
import { jobWork } from './job-work.ts';
import type { JobPlan } from './job-plan.ts';

export function workByDate(plan: JobPlan) {
  const { crew, cranes, pads, overloads } = jobWork(plan);
  const crewOn = new Map(crew.map((day) => [day.date, day]));
  const cranesOn = Map.groupBy(cranes, ({ date }) => date);
  const padsOn = new Map(pads.map((day) => [day.date, day]));
  const overloadsOn = Map.groupBy(overloads, ({ date }) => date);
  return (date: string) => {
    const craneDays = cranesOn.get(date);
    const minutes = (of: 'minutesNeeded' | 'minutesThere'): number | null =>
      craneDays?.reduce((sum, day) => sum + day[of], 0) ?? null;
    return {
      crewHoursNeeded: crewOn.get(date)?.hoursNeeded ?? 0,
      crewHoursThere: crewOn.get(date)?.hoursThere ?? 0,
      craneMinutesNeeded: minutes('minutesNeeded'),
      craneMinutesThere: minutes('minutesThere'),
      padPlacesNeeded: padsOn.get(date)?.needed ?? null,
      padPlacesThere: padsOn.get(date)?.there ?? null,
      overloads: (overloadsOn.get(date) ?? []).map(({ id }) => id),
    };
  };
}
