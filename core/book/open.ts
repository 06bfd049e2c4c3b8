// Opens a book, or makes a new one: looks what the file is, takes the writer's place or says that another
// has it, sets what every connection needs, and brings an older book to the newest shape after copying it
// aside. Whatever is refused here leaves the file as it was.
import { existsSync, realpathSync } from 'node:fs';
import path from 'node:path';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import { allMigrations } from '../../migrations/all.ts';
import { copyBook } from './copy-book.ts';
import { refusalOfFile, refusalOfVersion } from './identity.ts';
import { loadSqlite } from './load-sqlite.ts';
import type { Handle, OpenHandle } from './load-sqlite.ts';
import { makeBook } from './make-book.ts';
import { migrate, newestVersion, pendingMigrations } from './migrate.ts';
import type { Migration } from './migration.ts';
import { makeOpenBook } from './open-book.ts';
import type { OpenBook } from './open-book.ts';
import { setPragmas, setReaderPragmas } from './pragmas.ts';
import { refusalIn } from './refused.ts';
import { takeWriterLock } from './writer-lock.ts';
import type { WriterLock } from './writer-lock.ts';

export type { CommandAnswer } from './commands.ts';
export type { OpenBook } from './open-book.ts';

export interface OpenOptions {
  readonly mode: 'create' | 'open' | 'open-or-create';
  /** ISO 8601 with offset: noted beside the migrations that run. */
  readonly now: string;
  /** All that there are, where absent. */
  readonly migrations?: readonly Migration[];
}

interface Opening {
  readonly file: string;
  readonly now: string;
  readonly migrations: readonly Migration[];
  readonly newest: number;
  readonly openHandle: OpenHandle;
}

/**
 * Codes: node-too-old, sqlite-not-loaded, no-such-folder, no-such-book, book-exists, not-a-book,
 * book-damaged, book-newer, book-not-readable, book-in-use, log-of-another-book, migration-failed, and
 * those of a disk that is full or may not be written to.
 */
export async function openBook(givenFile: string, options: OpenOptions): Promise<Answer<OpenBook>> {
  const sqlite = await loadSqlite();
  if (!sqlite.ok) return sqlite;
  const { mode, now, migrations = allMigrations } = options;
  const folder = path.dirname(path.resolve(givenFile));
  if (!existsSync(folder))
    return refuse('no-such-folder', `There is no folder ${folder}.`, { field: 'file' });
  const file = realFile(givenFile);
  const isThere = existsSync(file);
  if (isThere && mode === 'create')
    return refuse('book-exists', `${file} is there already; no new book was made.`, { field: 'file' });
  if (!isThere && mode === 'open')
    return refuse('no-such-book', `There is no book ${file}.`, {
      field: 'file',
      hint: 'Maybe it was moved, or its name is spelt in another way.',
    });
  const opening: Opening = {
    file,
    now,
    migrations,
    newest: newestVersion(migrations),
    openHandle: sqlite.value,
  };
  try {
    return await (isThere ? openThere(opening) : openNew(opening));
  } catch (error) {
    const refusal = refusalIn(error) ?? refusalOfSystem(error, file);
    if (refusal === null) throw error;
    return { ok: false, error: refusal };
  }
}

/** Through links, so that one book has one lock whichever way it is reached. */
function realFile(given: string): string {
  const full = path.resolve(given);
  if (existsSync(full)) return realpathSync(full);
  return path.join(realpathSync(path.dirname(full)), path.basename(full));
}

async function openNew(opening: Opening): Promise<Answer<OpenBook>> {
  const { file, migrations, now, openHandle } = opening;
  const lock = takeWriterLock(file, openHandle);
  if (lock === null)
    return refuse(
      'book-in-use',
      `${file} cannot be made: another program is making it, or its folder is read-only.`,
      {
        field: 'file',
      },
    );
  try {
    // Somebody may have made it since it was looked for; then it is opened like any other.
    const made = existsSync(file) ? answer(null) : makeBook(file, migrations, now, openHandle);
    if (!made.ok) return made;
  } finally {
    lock.release();
  }
  return openThere(opening);
}

async function openThere(opening: Opening): Promise<Answer<OpenBook>> {
  const { file, newest, openHandle } = opening;
  const refusal = refusalOfFile(file, newest, openHandle);
  if (refusal !== null) return { ok: false, error: refusal };
  const lock = takeWriterLock(file, openHandle);
  return lock === null ? openForReading(opening) : openForWriting(opening, lock);
}

async function openForWriting(opening: Opening, lock: WriterLock): Promise<Answer<OpenBook>> {
  const { file, migrations, openHandle } = opening;
  let handle: Handle | null = null;
  let isOpen = false;
  try {
    handle = openHandle(file, { fileMustExist: true });
    setPragmas(handle);
    const ready = await bringUpToDate(opening, handle);
    if (!ready.ok) return ready;
    isOpen = true;
    const writer = { handle, lock };
    return answer(
      makeOpenBook({
        file,
        notice: ready.value,
        migrations,
        openReader: () => openReader(opening),
        openHandle,
        writer,
      }),
    );
  } finally {
    if (!isOpen) {
      handle?.close();
      lock.release();
    }
  }
}

/** Answers what a person should know: where the copy of the older book is. */
async function bringUpToDate(opening: Opening, handle: Handle): Promise<Answer<string | null>> {
  const { file, migrations, newest, now } = opening;
  // Again, now that nobody else can change it.
  const refusal = refusalOfVersion(file, handle, newest);
  if (refusal !== null) return { ok: false, error: refusal };
  const pending = pendingMigrations(handle, migrations);
  const [first] = pending;
  if (first === undefined) return answer(null);
  const copied = await copyBook(
    handle,
    freeName(`${file}.before-migration-${first.number}`),
    opening.openHandle,
  );
  if (!copied.ok) return copied;
  const migrated = migrate(handle, pending, now);
  if (!migrated.ok) return migrated;
  return answer(`The book was brought to version ${newest}; a copy of it as it was is ${copied.value.file}.`);
}

function freeName(wanted: string): string {
  let name = wanted;
  for (let count = 2; existsSync(name); count += 1) name = `${wanted}-${count}`;
  return name;
}

function openForReading(opening: Opening): Answer<OpenBook> {
  const { file, migrations, openHandle } = opening;
  const handle = openReader(opening);
  const pending = pendingMigrations(handle, migrations).length;
  handle.close();
  if (pending > 0)
    return refuse(
      'book-in-use',
      `${file} is of an older version and in use, so that it cannot be brought up to date.`,
      {
        field: 'file',
        hint: 'Maybe an older Regang has it open: close that first.',
      },
    );
  const notice = `${file} is open for reading only: another Regang writes to it, or its folder may not be written to.`;
  return answer(
    makeOpenBook({
      file,
      notice,
      migrations,
      openReader: () => openReader(opening),
      openHandle,
      writer: null,
    }),
  );
}

function openReader(opening: Opening): Handle {
  const handle = opening.openHandle(opening.file, { fileMustExist: true });
  setReaderPragmas(handle);
  return handle;
}

function refusalOfSystem(
  error: unknown,
  file: string,
): { code: string; message: string; field: string } | null {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (!['EACCES', 'EPERM', 'EROFS', 'ENOSPC', 'EISDIR', 'ENOTDIR'].includes(code)) return null;
  return { code: 'book-not-writable', message: `${file} cannot be opened: ${String(error)}.`, field: 'file' };
}
