// The sheet of a job's shortfalls: the id is the job.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { shortfallSheet } from '../sheets/shortfall-sheet.ts';
import { asData } from './as-data.ts';
import { query } from './procedure.ts';
import { instant } from './shapes.ts';
import { paperSheetInput, sheetOutput } from './sheet-shape.ts';
import { readShortfallSheet } from './shortfall-sheet-facts.ts';

export const sheetShortfalls = query({
  name: 'sheet.shortfalls',
  input: paperSheetInput.extend({ now: z.exactOptional(instant) }),
  output: sheetOutput,
  run: async (book, { id, units, now }) => {
    const facts = await readShortfallSheet(book, id, now);
    if (!facts.ok) return facts;
    return answer(asData(shortfallSheet({ ...facts.value, units: units ?? facts.value.units })));
  },
});
