// A week plan or day sheet was printed: its lines are kept, so that the next one can mark what has changed since, with
// its revision and who got it. Printed once more as it was it bears the same revision.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { dayLinesOf } from '../sheets/day-sheet.ts';
import { weekLines } from '../sheets/week-lines.ts';
import { readDaySheet } from './day-sheet-facts.ts';
import { command } from './procedure.ts';
import { code, commandId, date, instant } from './shapes.ts';
import { readWeekSheet } from './week-sheet-facts.ts';

export const sheetPrinted = command({
  name: 'sheet.printed',
  input: z.strictObject({
    commandId,
    job: code,
    kind: z.enum(['week', 'day']),
    /** Its first day. */
    of: date,
    /** Who gets it. */
    given: z.array(z.string().trim().min(1).max(80)).max(20),
    now: instant.optional(),
  }),
  output: z.strictObject({ id: z.string(), revision: z.int(), lines: z.int() }),
  run: async (book, { commandId: id, job, kind, of, given, now }, { at, who }) => {
    const asked = now === undefined ? {} : { now };
    const read = { job, date: of };
    const facts =
      kind === 'week' ? await readWeekSheet(book, read, asked) : await readDaySheet(book, read, asked);
    if (!facts.ok) return facts;
    const { revision } = facts.value.print;
    const lines = [...('pours' in facts.value ? weekLines(facts.value) : dayLinesOf(facts.value))];
    await book.putJobEntry(
      { job, kind: 'sheet-print', id },
      { kind, of, revision, at, who, given: [...new Set(given)], lines },
    );
    return answer({ id, revision, lines: lines.length });
  },
});
