// Reports of days are only ever added: of each date the last one counts that was not taken back, and what no report
// says was done is still to be done.
import type { JobEntry, KeptEntry } from '../job-entries.ts';
import type { Step } from '../steps.ts';

export type DayReport = KeptEntry<'day-report'>;
export type ReportedStep = JobEntry<'day-report'>['steps'][number];

/** In the order of their dates, one a date. */
export function countingReports(reports: readonly DayReport[]): readonly DayReport[] {
  const takenBack = new Set(reports.flatMap(({ entry }) => entry.takesBack ?? []));
  const last = new Map<string, DayReport>();
  for (const report of [...reports].sort((one, other) => one.number - other.number))
    if (!takenBack.has(report.id) && !isOnlyTakingBack(report)) last.set(report.entry.date, report);
  return [...last.values()].sort((one, other) => (one.entry.date < other.entry.date ? -1 : 1));
}

/** One that takes back a correction says once more what was said before that, and counts. */
function isOnlyTakingBack({ entry: { takesBack, steps } }: DayReport): boolean {
  return takesBack !== null && steps.length === 0;
}

/** Names a step by its day, what is done and where: the same in the plan and in a report. */
export function stepId(date: string, step: Pick<Step, 'kind' | 'pour' | 'toPour'>): string {
  return [date, step.kind, step.pour, ...(step.toPour === null ? [] : [step.toPour])].join('/');
}

/** The step named by the day for which it was planned first. */
export function reportedId(date: string, step: ReportedStep): string {
  return stepId(step.leftFrom ?? date, step);
}

export interface LeftOver {
  readonly id: string;
  /** The date for which it was planned. */
  readonly date: string;
  readonly step: ReportedStep;
}

/** What reports before the date say was not done, and no later one that it was; the oldest first. */
export function leftOverBefore(date: string, reports: readonly DayReport[]): readonly LeftOver[] {
  const open = new Map<string, LeftOver>();
  for (const { entry } of countingReports(reports)) {
    if (entry.date >= date) continue;
    for (const step of entry.steps) {
      const id = reportedId(entry.date, step);
      if (step.done) open.delete(id);
      else open.set(id, { id, date: step.leftFrom ?? entry.date, step });
    }
  }
  return [...open.values()].sort((one, other) => (one.date < other.date ? -1 : 1));
}
