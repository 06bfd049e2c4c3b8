// `regang import KIND --book FILE INPUT`: takes a CSV file into a book, whole or not at all. A book that
// is not there yet is begun, unless this is only a trial.
import { randomUUID } from 'node:crypto';
import { existsSync, readFileSync, rmSync, statSync } from 'node:fs';
import process from 'node:process';
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import { importFile, importKinds } from '../procedures/import-file.ts';
import { code } from '../procedures/shapes.ts';
import { parseJson } from './calculate.ts';
import type { BookCommand } from './commands.ts';
import { done, outcomeOf, refused } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { ask, bookOption, fileFromHere, readOptions, withBook } from './with-book.ts';

const input = z.strictObject({
  kind: z.enum(importKinds),
  input: z.string().min(1).meta({ description: 'The CSV file' }),
  book: bookOption,
  job: code.optional(),
  map: z.string().optional().meta({ description: 'A JSON file: headings of the table to our columns' }),
  'dry-run': z.boolean().optional(),
});

const largestBytes = 20_000_000;
const columns = z.record(z.string(), z.string());

export const importCommand: BookCommand = {
  input,
  output: importFile.output,
  run: async (given) => {
    const options = readOptions(input, given, ['kind', 'input']);
    if (!options.ok) return outcomeOf(options);
    const { kind, job, map } = options.value;
    const dryRun = options.value['dry-run'] === true;
    const text = readText(options.value.input, 'input');
    if (!text.ok) return outcomeOf(text);
    const mapped = map === undefined ? answer(undefined) : readMap(map);
    if (!mapped.ok) return outcomeOf(mapped);
    const asked = await inBook(options.value.book, dryRun, {
      commandId: randomUUID(),
      kind,
      text: text.value,
      dryRun,
      ...(job === undefined ? {} : { job }),
      ...(mapped.value === undefined ? {} : { columns: mapped.value }),
    });
    return asked.ok ? imported(importFile.output.parse(asked.value)) : outcomeOf(asked);
  },
};

async function inBook(file: string, dryRun: boolean, call: unknown): Promise<Answer<unknown>> {
  const full = fileFromHere(file);
  const isNew = !existsSync(full);
  if (isNew && dryRun)
    return refuse('no-file', `There is no book ${full}, and --dry-run makes none.`, { field: 'book' });
  if (isNew) process.stderr.write(`regang: ${full} is not there: a new book is begun.\n`);
  const asked = await withBook(full, async (book) => ask(book, importFile, call), isNew ? 'create' : 'open');
  const answered = asked.ok ? asked.value : asked;
  // A refused file leaves no empty book behind.
  if (isNew && !isStored(answered))
    for (const ending of ['', '-writer', '-wal', '-shm']) rmSync(full + ending, { force: true });
  return answered;
}

function isStored(answered: Answer<unknown>): boolean {
  return answered.ok && importFile.output.parse(answered.value).stored;
}

function imported(outcome: z.output<typeof importFile.output>): Outcome {
  const first = outcome.bad[0];
  if (first === undefined) return done(outcome);
  const more = outcome.bad.length === 1 ? '' : ` and ${outcome.bad.length - 1} more`;
  const message = `Nothing was imported: line ${first.line}, ${first.column}: read "${first.read}", wanted ${first.wanted}${more}.`;
  return refused({ code: 'bad-rows', message, field: first.column }, outcome);
}

function readText(file: string, field: string): Answer<string> {
  const full = fileFromHere(file);
  try {
    const { size } = statSync(full);
    if (size > largestBytes)
      return refuse('too-large', `${full} has ${size} bytes; a table may have ${largestBytes}.`, { field });
    return answer(new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(full)));
  } catch (error) {
    const why = error instanceof TypeError ? 'it is not UTF-8 text' : String(error);
    return refuse('file-not-read', `${full} could not be read: ${why}.`, { field });
  }
}

function readMap(file: string): Answer<Record<string, string>> {
  const text = readText(file, 'map');
  if (!text.ok) return text;
  const parsed = parseJson(text.value);
  if (!parsed.ok) return refuse('bad-json', `${file} is not JSON.`, { field: 'map' });
  const mapped = columns.safeParse(parsed.value);
  if (mapped.success) return answer(mapped.data);
  return refuse('bad-map', `${file}: wanted headings of the table to our columns, as {"Item no.":"code"}.`, {
    field: 'map',
  });
}
