// The sheet of one day, of that which its id names.
import { answer } from '../answer.ts';
import { daySheet } from '../sheets/day-sheet.ts';
import { asData } from './as-data.ts';
import { readDaySheet } from './day-sheet-facts.ts';
import { query } from './procedure.ts';
import { daysSheetInput, readDaysId } from './sheet-of-days.ts';
import { sheetOutput } from './sheet-shape.ts';

export const sheetDay = query({
  name: 'sheet.day',
  input: daysSheetInput,
  output: sheetOutput,
  run: async (book, asked) => {
    const of = readDaysId(asked.id);
    if (!of.ok) return of;
    const facts = await readDaySheet(book, of.value, asked);
    if (!facts.ok) return { ok: false, error: { ...facts.error, field: 'id' } };
    return answer(asData({ ...daySheet(facts.value), of: facts.value.date }));
  },
});
