// Copies of the book in the folder `backups` beside it: one for each day on which the book was worked
// with, the day's last state, and the ten newest of them. Doors ask for one on closing a book and once a day.
import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import { loadSqlite } from './load-sqlite.ts';
import type { OpenHandle } from './load-sqlite.ts';
import type { OpenBook } from './open-book.ts';

const backupsKept = 10;

/**
 * Makes today's copy where the book has changed since the newest one. Only when it is there and whole does
 * it replace one of the same day, and only then do copies over ten go.
 * @param now ISO 8601 with offset; its date names the copy
 * @returns the newest copy, null where the book is open for reading only
 */
export async function keepBackup(
  book: OpenBook,
  now: string,
): Promise<Answer<{ readonly file: string | null; readonly made: boolean }>> {
  if (book.readOnly) return answer({ file: null, made: false });
  const sqlite = await loadSqlite();
  if (!sqlite.ok) return sqlite;
  const folder = path.join(path.dirname(book.file), 'backups');
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    return refuse('no-backup', `No copy of ${book.file} was made: ${String(error)}.`);
  }
  const newest = backupsOf(book.file, folder).at(-1);
  if (newest !== undefined && lastCommand(newest, sqlite.value) === lastCommand(book.file, sqlite.value))
    return answer({ file: newest, made: false });
  const file = freeName(folder, book.file, now.slice(0, 10));
  const copied = await book.backup(file);
  if (!copied.ok) return copied;
  removeOld(book.file, folder);
  return answer({ file, made: true });
}

/** The copies of this book, oldest first. */
export function backupsOf(bookFile: string, folder: string): readonly string[] {
  if (!existsSync(folder)) return [];
  const { name, ext } = path.parse(bookFile);
  const isCopy = (each: string): boolean => {
    if (!each.startsWith(`${name}-`) || !each.endsWith(ext)) return false;
    return /^\d{4}-\d\d-\d\d-\d{4}$/u.test(each.slice(name.length + 1, each.length - ext.length));
  };
  return readdirSync(folder)
    .filter(isCopy)
    .sort()
    .map((each) => path.join(folder, each));
}

/** `north-2026-03-02-0001.regang`, and 0002 for the same day's next. */
function freeName(folder: string, bookFile: string, day: string): string {
  const { name, ext } = path.parse(bookFile);
  for (let count = 1; ; count += 1) {
    const file = path.join(folder, `${name}-${day}-${String(count).padStart(4, '0')}${ext}`);
    if (!existsSync(file)) return file;
  }
}

function removeOld(bookFile: string, folder: string): void {
  const ending = path.parse(bookFile).ext.length + '-0001'.length;
  const byDay = Map.groupBy(backupsOf(bookFile, folder), (each) => each.slice(0, -ending));
  const lastOfDay = [...byDay.values()].map((files) => files.at(-1));
  const kept = new Set(lastOfDay.slice(-backupsKept));
  for (const files of byDay.values()) for (const file of files) if (!kept.has(file)) rmSync(file);
}

function lastCommand(file: string, openHandle: OpenHandle): string {
  const handle = openHandle(file, { readonly: true, fileMustExist: true });
  try {
    const version = String(handle.pragma('user_version', { simple: true }));
    const id = handle.prepare('SELECT id FROM command ORDER BY number DESC LIMIT 1').pluck().get();
    return `${version} ${String(id)}`;
  } finally {
    handle.close();
  }
}
