// What was planned for each week and did not happen, by reason. Work left over from another day was planned once, and
// is counted with the day for which it was planned; what of it was made up for stands beside.
import { dateOfDay, dayOfDate, weekdayOfDay } from '../days.ts';
import { type MissReason, missReasons } from './reasons.ts';
import { countingReports, type DayReport } from './reports.ts';

export interface WeekOfMisses {
  /** Its Monday. */
  readonly week: string;
  readonly daysEnded: number;
  /** Steps planned for its days that were ended. */
  readonly planned: number;
  readonly done: number;
  readonly notDone: readonly { readonly reason: MissReason; readonly steps: number }[];
  /** Steps left over from earlier days that were reported, and those of them that were done. */
  readonly leftOver: number;
  readonly leftOverDone: number;
}

/** The latest first; of each week only reasons that were given. */
export function missesByWeek(reports: readonly DayReport[]): readonly WeekOfMisses[] {
  const weeks = Map.groupBy(countingReports(reports), ({ entry }) => mondayOf(entry.date));
  return [...weeks]
    .map(([week, ended]): WeekOfMisses => {
      const all = ended.flatMap(({ entry }) => entry.steps);
      const planned = all.filter(({ leftFrom }) => leftFrom === null);
      const left = all.filter(({ leftFrom }) => leftFrom !== null);
      const missed = planned.filter(({ done }) => !done);
      return {
        week,
        daysEnded: ended.length,
        planned: planned.length,
        done: planned.length - missed.length,
        notDone: missReasons.flatMap((reason) => {
          const steps = missed.filter((step) => (step.reason ?? 'other') === reason).length;
          return steps === 0 ? [] : [{ reason, steps }];
        }),
        leftOver: left.length,
        leftOverDone: left.filter(({ done }) => done).length,
      };
    })
    .sort((one, other) => (one.week < other.week ? 1 : -1));
}

export function mondayOf(date: string): string {
  const day = dayOfDate(date);
  return dateOfDay(day - (weekdayOfDay(day) - 1));
}
