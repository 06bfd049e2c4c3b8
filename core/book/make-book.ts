// Makes a new book. It is made in a folder of its own beside the place and gets its name only when it is
// whole, so that a process killed in between leaves no half-made book behind.
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdtempSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import path from 'node:path';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import type { OpenHandle } from './load-sqlite.ts';
import { migrate } from './migrate.ts';
import type { Migration } from './migration.ts';
import { applicationId, setPragmas } from './pragmas.ts';

export function makeBook(
  file: string,
  migrations: readonly Migration[],
  now: string,
  openHandle: OpenHandle,
): Answer<null> {
  const left = leftBehind(file);
  if (left !== null)
    return refuse(
      'log-of-another-book',
      `${left} belongs to a book that is not there any more; a new ${path.basename(file)} would take it for its own.`,
      { field: 'file', hint: 'Maybe choose another name, or put the old book back beside it.' },
    );
  const folder = mkdtempSync(`${file}.making-`);
  try {
    const made = path.join(folder, 'book');
    const migrated = fill(made, migrations, now, openHandle);
    if (!migrated.ok) return migrated;
    renameSync(made, file);
    syncFolder(path.dirname(file));
    return answer(null);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function fill(
  file: string,
  migrations: readonly Migration[],
  now: string,
  openHandle: OpenHandle,
): Answer<number> {
  const handle = openHandle(file, {});
  try {
    setPragmas(handle);
    handle.pragma(`application_id = ${applicationId}`);
    return migrate(handle, migrations, now);
  } finally {
    handle.close();
  }
}

/** SQLite would play the log of an old book into a new one of the same name. */
function leftBehind(file: string): string | null {
  for (const ending of ['-wal', '-journal'])
    if (existsSync(file + ending) && statSync(file + ending).size > 0) return file + ending;
  return null;
}

/** Puts the new name on disk; Windows does so by itself and cannot open a folder. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const descriptor = openSync(folder, 'r');
  try {
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}
