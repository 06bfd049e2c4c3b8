// Whether a file is a book at all, before anything is written to it or beside it. Asked through SQLite and
// not by reading the file: closing a file by hand would drop the locks that this process holds on it.
import { existsSync, statSync } from 'node:fs';
import { refuse } from '../answer.ts';
import type { Refusal } from '../answer.ts';
import type { Handle, OpenHandle } from './load-sqlite.ts';
import { applicationId, numberPragma } from './pragmas.ts';
import { isDamage, sqliteCode } from './refused.ts';

/** Null where the file is a book that this version of the app can read. */
export function refusalOfFile(file: string, newest: number, openHandle: OpenHandle): Refusal | null {
  if (!statSync(file).isFile())
    return refuse('not-a-book', `${file} is not a file.`, { field: 'file' }).error;
  let handle: Handle | null = null;
  try {
    handle = openHandle(file, { readonly: true, fileMustExist: true });
    handle.pragma('trusted_schema = OFF');
    if (numberPragma(handle, 'application_id') !== applicationId) return notABook(file);
    const damage = damageOf(handle);
    if (damage !== null) return damaged(file, damage);
    if (isCutOff(file, handle)) return damaged(file, 'it ends before its last page');
    return refusalOfVersion(file, handle, newest);
  } catch (error) {
    if (sqliteCode(error) === 'SQLITE_NOTADB') return notABook(file);
    if (isDamage(error)) return damaged(file, error instanceof Error ? error.message : '');
    if (sqliteCode(error) === '') throw error;
    return refuse('book-not-readable', `${file} cannot be read: ${String(error)}.`, {
      field: 'file',
      hint: 'Maybe the file or its folder may not be read, or another program holds it.',
    }).error;
  } finally {
    handle?.close();
  }
}

/** A file of more pages than these takes longer to look over than anybody waits for a book to open. */
const lookedOverUpToBytes = 48 * 1024 * 1024;

/** The tables that grow with every day's work. */
const growing: readonly string[] = ['movement', 'stock_level', 'command'];

/**
 * The whole file; of a large one all but its growing tables, of which the newest rows are read. Those are looked over
 * whenever a copy of the book is made and when `check` is asked.
 */
function damageOf(handle: Handle): string | null {
  const bytes = numberPragma(handle, 'page_count') * numberPragma(handle, 'page_size');
  if (bytes <= lookedOverUpToBytes) return firstDamage(handle, '1');
  const tables = handle
    .prepare<[], { name: string }>(
      "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'",
    )
    .all();
  for (const { name } of tables) {
    if (growing.includes(name)) handle.prepare(`SELECT * FROM "${name}" ORDER BY 1 DESC LIMIT 100`).all();
    else {
      const damage = firstDamage(handle, `"${name}"`);
      if (damage !== null) return damage;
    }
  }
  return null;
}

function firstDamage(handle: Handle, what: string): string | null {
  const found = String(handle.pragma(`quick_check(${what})`, { simple: true }));
  return found === 'ok' ? null : found;
}

/** A page that is cut off is read as zeros by the check above; while there is a log, it may hold the page. */
function isCutOff(file: string, handle: Handle): boolean {
  const log = `${file}-wal`;
  if (existsSync(log) && statSync(log).size > 0) return false;
  const bytes = numberPragma(handle, 'page_count') * numberPragma(handle, 'page_size');
  return statSync(file).size < bytes;
}

export function refusalOfVersion(file: string, handle: Handle, newest: number): Refusal | null {
  const version = numberPragma(handle, 'user_version');
  if (version <= newest) return null;
  return refuse(
    'book-newer',
    `${file} was written by a newer Regang: it has version ${version}, this one knows up to ${newest}. ` +
      'It was not touched.',
    { field: 'file', hint: 'Maybe this machine has an older Regang: install the newer one to open it.' },
  ).error;
}

function notABook(file: string): Refusal {
  return refuse('not-a-book', `${file} is not a book of Regang; it was not touched.`, {
    field: 'file',
    hint: 'Maybe another file was meant; a stock list, designs or pours are imported into a book.',
  }).error;
}

function damaged(file: string, what: string): Refusal {
  return refuse(
    'book-damaged',
    `${file} is damaged (${what.trim()}). It was left as it is, and nothing in it was changed.`,
    {
      field: 'file',
      hint: 'Maybe a copy is whole: look in the folder "backups" beside it, and keep the damaged file too.',
    },
  ).error;
}
