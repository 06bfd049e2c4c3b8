// Makes a new book with the demo job by importing the very CSV files that lie beside this one, in one
// command. The book is made under another name and gets its own only when all of it is there.
import { existsSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { type Answer, answer, refuse } from '../core/answer.ts';
import type { BookWriter } from '../core/book/book.ts';
import { openBook } from '../core/book/open.ts';
import { importInto } from '../core/exchange/import.ts';
import type { ImportContext, ImportKind } from '../core/exchange/prepared.ts';
import { putDemoPlanning } from './planning.ts';

/** In the order in which they can be imported: each names only what those before it brought. */
export const demoFiles: readonly { readonly kind: ImportKind; readonly file: string }[] = [
  { kind: 'components', file: 'components.csv' },
  { kind: 'rules', file: 'rules.csv' },
  { kind: 'places', file: 'places.csv' },
  { kind: 'jobs', file: 'jobs.csv' },
  { kind: 'stock', file: 'stock.csv' },
  { kind: 'designs', file: 'designs.csv' },
  { kind: 'pours', file: 'pours.csv' },
  { kind: 'cranes', file: 'cranes.csv' },
  { kind: 'trucks', file: 'trucks.csv' },
  { kind: 'notes', file: 'notes.csv' },
];

/** The text of one of the files. */
export function demoText(file: string): string {
  return readFileSync(new URL(file, import.meta.url), 'utf8');
}

/**
 * Codes: book-exists, demo-file-bad, and those of openBook. `at` is ISO 8601 with offset: when the stock is
 * recorded, and by whom.
 */
export async function makeDemo(file: string, context: ImportContext): Promise<Answer<{ job: string }>> {
  if (existsSync(file))
    return refuse('book-exists', `${file} is there already; no demo was made.`, {
      field: 'file',
      hint: 'Maybe give another name: the demo is only made anew.',
    });
  const draft = `${file}.being-made`;
  remove(draft);
  try {
    const made = await fill(draft, context);
    if (made.ok) renameSync(draft, file);
    return made;
  } finally {
    remove(draft);
  }
}

async function fill(file: string, context: ImportContext): Promise<Answer<{ job: string }>> {
  const book = await openBook(file, { mode: 'create', now: context.at });
  if (!book.ok) return book;
  try {
    const meta = { commandId: 'demo-job', name: 'demo.make', ...context };
    return await book.value.command(meta, (writer) => importAll(writer, context));
  } finally {
    await book.value.close();
  }
}

async function importAll(writer: BookWriter, context: ImportContext): Promise<Answer<{ job: string }>> {
  for (const { kind, file } of demoFiles) {
    const input = { commandId: `demo-job-${kind}`, kind, text: demoText(file), dryRun: false };
    const { bad } = await importInto(writer, input, context);
    const [first] = bad;
    if (first !== undefined) {
      const place = `${file}, line ${first.line}, column ${first.column}`;
      return refuse('demo-file-bad', `${place}: read "${first.read}", wanted ${first.wanted}.`);
    }
  }
  const [job] = await writer.jobs();
  if (job === undefined) return refuse('demo-file-bad', 'jobs.csv has no job.');
  await putDemoPlanning(writer, job.code);
  return answer({ job: job.code });
}

/** The book and whatever lies beside it under its name. */
function remove(file: string): void {
  for (const end of ['', '-wal', '-shm', '-journal', '-writer', '-writer-journal'])
    rmSync(`${file}${end}`, { force: true });
}
