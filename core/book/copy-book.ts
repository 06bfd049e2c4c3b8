// A copy of an open book by SQLite's own online backup: copying the file itself would lose what is still
// in the log beside it. The copy is looked over, needs no second file, and gets its name only when whole.
import { existsSync, renameSync, rmSync } from 'node:fs';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import type { Handle, OpenHandle } from './load-sqlite.ts';

/** Refuses a name that is taken: a copy is never written over anything. */
export async function copyBook(
  source: Handle,
  toFile: string,
  openHandle: OpenHandle,
): Promise<Answer<{ readonly file: string }>> {
  if (existsSync(toFile))
    return refuse('file-exists', `${toFile} is there already; nothing was copied.`, {
      field: 'file',
      hint: 'Maybe choose another name.',
    });
  const part = `${toFile}.part`;
  try {
    rmSync(part, { force: true });
    await source.backup(part);
    const damage = finish(part, openHandle);
    if (damage !== null) {
      rmSync(part, { force: true });
      return refuse(
        'copy-not-whole',
        `A copy of ${source.name} was made and is damaged (${damage}): it was not kept.`,
        {
          hint: 'Maybe the book or the disk is damaged: `check` says what it finds in the book.',
        },
      );
    }
    renameSync(part, toFile);
    return answer({ file: toFile });
  } catch (error) {
    rmSync(part, { force: true });
    const text = error instanceof Error ? error.message : String(error);
    return refuse('copy-failed', `The copy ${toFile} could not be made: ${text}.`, {
      hint: 'Maybe the folder is not there or may not be written to, or the disk is full.',
    });
  }
}

/** Takes the copy out of WAL, so that looking into it leaves no files beside it. Answers what is damaged. */
function finish(file: string, openHandle: OpenHandle): string | null {
  const handle = openHandle(file, { fileMustExist: true });
  handle.pragma('journal_mode = DELETE');
  handle.close();
  // Read-only, where SQLite looks at the pages and not at every check of every row: quick on a large book.
  const reader = openHandle(file, { readonly: true, fileMustExist: true });
  try {
    const damage = reader.pragma('quick_check(1)', { simple: true });
    return damage === 'ok' ? null : String(damage);
  } finally {
    reader.close();
  }
}
