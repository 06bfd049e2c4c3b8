// Takes in one CSV file, whole or not at all. Bad rows do not stop the reading: every one of them is
// named with its line, its column, what was read and what was wanted.
import { z } from 'zod';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const importKinds = ['components', 'rules', 'places', 'stock', 'designs', 'jobs', 'pours'] as const;

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
    /** Needed for pours only where the file has no job column. */
    job: code.optional(),
    /** Column names of the file for ours, where they differ. */
    columns: z.record(z.string(), z.string()).optional(),
    dryRun: z.boolean().default(false),
  }),
  output: z.strictObject({
    kind: z.enum(importKinds),
    rows: z.int(),
    added: z.int(),
    changed: z.int(),
    stored: z.boolean(),
    bad: z.array(badCell),
  }),
  run: () => Promise.reject(new Error('being built')),
});
