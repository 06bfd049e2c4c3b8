// Takes in one CSV file, whole or not at all. Bad rows do not stop the reading: every one of them is
// named with its line, its column, what was read and what was wanted.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { importInto } from '../exchange/import.ts';
import { importKinds } from '../exchange/prepared.ts';
import { asData } from './as-data.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export { importKinds };

export const badCell = z.strictObject({
  line: z.int(),
  column: z.string(),
  read: z.string(),
  wanted: z.string(),
});

export const importFile = command({
  name: 'import.file',
  input: z.strictObject({
    commandId,
    kind: z.enum(importKinds),
    text: z.string().max(20_000_000),
    /** Needed for pours only where the file has no job column; for stock it says whose midnight a date means. */
    job: code.optional(),
    /** Headings of the file to our columns, where they differ: {"Item no.": "code"}; to "" leaves one out. */
    columns: z.record(z.string(), z.string()).optional(),
    dryRun: z.boolean().default(false),
  }),
  output: z.strictObject({
    kind: z.enum(importKinds),
    rows: z.int(),
    added: z.int(),
    changed: z.int(),
    stored: z.boolean(),
    /** Rows left out: how many were blank, and the lines of repeated headings and of totals. */
    skipped: z.strictObject({ blank: z.int(), headings: z.array(z.int()), totals: z.array(z.int()) }),
    bad: z.array(badCell),
  }),
  run: async (book, input, context) => {
    if (input.job !== undefined && (await book.job(input.job)) === null) return unknownJob(input.job);
    return answer(asData(await importInto(book, input, context)));
  },
});
