// A day of a job as its end asks about it: the plan as the book has it, the list of the day, the reports there are.
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { type DayLine, dayLines, notEnded } from '../plan/day-end/day-lines.ts';
import { countingReports, type DayReport } from '../plan/day-end/reports.ts';
import { msOf } from '../plan/local-time.ts';
import type { Gang } from '../yard/gang.ts';
import { type JobFacts, readJobFacts } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';

export interface DayFacts {
  readonly facts: JobFacts;
  readonly plan: JobPlan;
  readonly date: string;
  readonly lines: readonly DayLine[];
  /** That counts for the date; null where it was not ended. */
  readonly report: DayReport | null;
  readonly reports: readonly DayReport[];
  readonly notEnded: readonly string[];
  readonly gangs: readonly Gang[];
}

/** @param date absent: the date of now by the job's clock */
export async function readDay(
  book: BookReader,
  asked: { readonly job: string; readonly date?: string | undefined; readonly now?: string | undefined },
): Promise<Answer<DayFacts>> {
  const facts = await readJobFacts(book, asked.job, asked.now);
  if (!facts.ok) return facts;
  const plan = planJob(facts.value);
  if (!plan.ok) return plan;
  const [reports, gangs] = await Promise.all([book.jobEntries(asked.job, 'day-report'), book.gangs()]);
  const date = asked.date ?? facts.value.yard.today;
  const { steps } = plan.value;
  return answer({
    facts: facts.value,
    plan: plan.value,
    date,
    lines: dayLines(date, steps, reports, msOf),
    report: countingReports(reports).find(({ entry }) => entry.date === date) ?? null,
    reports,
    notEnded: notEnded(date, steps, reports),
    gangs,
  });
}

/** Tags of the gangs that stand at a turn, or are made up for it. */
export function tagsAt(gangs: readonly Gang[], job: string, turns: readonly string[]): readonly string[] {
  const there = gangs.filter(
    ({ last }) =>
      last.job === job &&
      turns.some((turn) => (last.state === 'standing' && last.turn === turn) || last.nextTurn === turn),
  );
  return [...new Set(there.map(({ code }) => code))].sort();
}
