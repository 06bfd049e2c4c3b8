// The week plan for the wall, two weeks from the day that its id names.
import { answer } from '../answer.ts';
import { weekSheet } from '../sheets/week-sheet.ts';
import { asData } from './as-data.ts';
import { query } from './procedure.ts';
import { daysSheetInput, readDaysId } from './sheet-of-days.ts';
import { sheetOutput } from './sheet-shape.ts';
import { readWeekSheet } from './week-sheet-facts.ts';

export const sheetWeek = query({
  name: 'sheet.week',
  input: daysSheetInput,
  output: sheetOutput,
  run: async (book, asked) => {
    const of = readDaysId(asked.id);
    if (!of.ok) return of;
    const facts = await readWeekSheet(book, of.value, asked);
    if (!facts.ok) return { ok: false, error: { ...facts.error, field: 'id' } };
    return answer(asData({ ...weekSheet(facts.value), of: facts.value.from }));
  },
});
