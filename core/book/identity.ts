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
    const damage = handle.pragma('quick_check(1)', { simple: true });
    if (damage !== 'ok') return damaged(file, String(damage));
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
