// Ends a day: the report is kept as a record, and what follows from it is carried out in the same command. Ended once
// more, the day counts as ended the last time.
import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import type { BookWriter } from '../book/book.ts';
import { carryOut, takeBack } from './carried-out.ts';
import { dayWords } from '../sheets/day-words.ts';
import { endedDay } from './ended-lines.ts';
import { type EndOfDay, readEndOfDay } from './end-of-day.ts';
import { type CommandContext, command } from './procedure.ts';
import { reportedSteps } from './reported-steps.ts';
import { commandId, finding } from './shapes.ts';

export const dayendSave = command({
  name: 'dayend.save',
  input: z.strictObject({
    commandId,
    ...endedDay,
    remark: z.string().trim().max(500).nullable(),
  }),
  output: z.strictObject({
    report: z.string(),
    /** The applied change by which pours moved; null where none did. */
    applied: z.string().nullable(),
    moved: z.int(),
    findings: z.array(finding),
  }),
  run: async (book, { commandId: id, remark, ...asked }, context) => {
    const end = await readEndOfDay(book, asked, context.who);
    if (!end.ok) return end;
    const applied = await carriedOut(book, end.value, { id, ...asked }, context);
    if (!applied.ok) return applied;
    const { job, date } = asked;
    const count = end.value.day.reports.filter(({ entry }) => entry.date === date).length;
    const report = `${date} ${count + 1}`;
    await book.putJobEntry(
      { job, kind: 'day-report', id: report },
      {
        date,
        at: context.at,
        who: context.who,
        steps: [...reportedSteps(end.value)],
        remark: remark === '' ? null : remark,
        applied: applied.value,
        takesBack: null,
      },
    );
    return answer({
      report,
      applied: applied.value,
      moved: end.value.moves.length,
      findings: end.value.findings.map((each) => ({ ...each })),
    });
  },
});

async function carriedOut(
  book: BookWriter,
  { takesBack, changes }: EndOfDay,
  { id, job, date }: { readonly id: string; readonly job: string; readonly date: string },
  context: CommandContext,
): Promise<Answer<string | null>> {
  if (takesBack !== null) {
    const back = await takeBack(book, job, takesBack, context);
    if (!back.ok) return back;
  }
  if (changes.length === 0) return answer(null);
  const done = await carryOut(book, { id, job, changes, about: `end of ${dayWords(date)}` }, context);
  return done.ok ? answer(done.value.applied) : done;
}
