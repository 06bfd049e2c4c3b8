// A copy of an open book by SQLite's own online backup: copying the file itself would lose what is still
// in the log beside it. The copy gets its name only when it is whole.
import { existsSync, renameSync, rmSync } from 'node:fs';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import type { Handle } from './load-sqlite.ts';
import { sqliteCode } from './refused.ts';

/** Refuses a name that is taken; a copy is never written over anything. */
export async function copyBook(source: Handle, toFile: string): Promise<Answer<{ readonly file: string }>> {
  if (existsSync(toFile))
    return refuse('file-exists', `${toFile} is there already; nothing was copied.`, {
      field: 'file',
      hint: 'Maybe choose another name.',
    });
  const part = `${toFile}.part`;
  try {
    rmSync(part, { force: true });
    await source.backup(part);
    renameSync(part, toFile);
    return answer({ file: toFile });
  } catch (error) {
    rmSync(part, { force: true });
    const text = error instanceof Error ? error.message : String(error);
    return refuse(
      'copy-failed',
      `The copy ${toFile} could not be made: ${text} ${sqliteCode(error)}`.trim(),
      {
        hint: 'Maybe the folder is not there or may not be written to, or the disk is full.',
      },
    );
  }
}
