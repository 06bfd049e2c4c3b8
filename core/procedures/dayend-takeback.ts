// Takes the last end of a day back: the day counts as not ended (or as ended before), and what was moved by it is as it
// was. Only until another day is ended.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookWriter } from '../book/book.ts';
import { countingReports, type DayReport } from '../plan/day-end/reports.ts';
import { carryOut, takeBack } from './carried-out.ts';
import { command, type CommandContext } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const dayendTakeback = command({
  name: 'dayend.takeback',
  input: z.strictObject({ commandId, job: code, report: z.string() }),
  output: z.strictObject({ report: z.string() }),
  run: async (book, { commandId: given, job, report }, context) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const reports = await book.jobEntries(job, 'day-report');
    const last = reports.at(-1);
    const asked = reports.find(({ id }) => id === report);
    if (asked === undefined)
      return refuse('unknown-report', `Job ${job} has no report ${report}.`, { field: 'report' });
    if (last?.id !== report)
      return refuse(
        'reported-since',
        `${report} is not the last report any more: ${last?.id ?? ''} came after it.`,
        { field: 'report', hint: 'Maybe end the day once more instead: that corrects it.' },
      );
    if (asked.entry.applied !== null) {
      const back = await takeBack(book, job, asked.entry.applied, context);
      if (!back.ok) return back;
    }
    const { date } = asked.entry;
    const before = reportBefore(reports, asked);
    const applied = await movedAgain(book, { commandId: given, job, before }, context);
    if (!applied.ok) return applied;
    const count = reports.filter(({ entry }) => entry.date === date).length;
    const id = `${date} ${count + 1}`;
    await book.putJobEntry(
      { job, kind: 'day-report', id },
      {
        date,
        at: context.at,
        who: context.who,
        steps: before === null ? [] : before.entry.steps,
        remark: before === null ? null : before.entry.remark,
        applied: applied.value,
        takesBack: report,
      },
    );
    return answer({ report: id });
  },
});

/** What counted for the day before the report. */
function reportBefore(reports: readonly DayReport[], report: DayReport): DayReport | null {
  const earlier = reports.filter(({ number }) => number < report.number);
  return countingReports(earlier).find(({ entry }) => entry.date === report.entry.date) ?? null;
}

/** The report taken back had put back what the one before it moved: that is moved once more. */
async function movedAgain(
  book: BookWriter,
  of: { readonly commandId: string; readonly job: string; readonly before: DayReport | null },
  context: CommandContext,
): Promise<Answer<string | null>> {
  const id = of.before?.entry.applied ?? null;
  if (id === null) return answer(null);
  const applied = (await book.jobEntries(of.job, 'applied-change')).find((each) => each.id === id);
  if (applied === undefined) return answer(null);
  if (applied.entry.takenBackAt === null) return answer(id);
  const { changes, about } = applied.entry;
  const done = await carryOut(book, { id: of.commandId, job: of.job, changes, about }, context);
  return done.ok ? answer(done.value.applied) : done;
}
