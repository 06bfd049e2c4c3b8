// Brings a book to the newest shape. Each migration commits together with its version or not at all, so
// that a failure half-way leaves the book exactly as it was after the last whole step.
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import type { Handle } from './load-sqlite.ts';
import type { Migration } from './migration.ts';
import { numberPragma } from './pragmas.ts';

/** The version a book has after all of them. Throws where the list is not 1, 2, 3 ... in order. */
export function newestVersion(migrations: readonly Migration[]): number {
  for (const [index, migration] of migrations.entries())
    if (migration.number !== index + 1)
      throw new Error(`Migration "${migration.name}" has number ${migration.number}, not ${index + 1}.`);
  return migrations.length;
}

export function pendingMigrations(handle: Handle, migrations: readonly Migration[]): readonly Migration[] {
  const version = numberPragma(handle, 'user_version');
  return migrations.filter((migration) => migration.number > version);
}

/** @param now ISO 8601, noted beside the migration's name */
export function migrate(handle: Handle, pending: readonly Migration[], now: string): Answer<number> {
  for (const migration of pending) {
    const failure = runOne(handle, migration, now);
    if (failure !== null)
      return refuse(
        'migration-failed',
        `The book could not be brought to version ${migration.number} ("${migration.name}"): ${failure}. ` +
          `It is as it was, at version ${numberPragma(handle, 'user_version')}.`,
        { hint: 'Maybe the book was changed by another program: `check` says what it finds in it.' },
      );
  }
  return answer(pending.length);
}

function runOne(handle: Handle, migration: Migration, now: string): string | null {
  // Outside the transaction, where alone it has effect: with foreign keys on, rebuilding a table would
  // take the rows that refer to it away without a word.
  handle.pragma('foreign_keys = OFF');
  try {
    handle.exec('BEGIN IMMEDIATE');
    handle.exec(migration.sql);
    handle
      .prepare('INSERT INTO migration (number, name, at) VALUES (?, ?, ?)')
      .run(migration.number, migration.name, now);
    const broken = handle.pragma('foreign_key_check') as readonly { readonly table: string }[];
    const first = broken[0];
    if (first !== undefined)
      throw new Error(`${broken.length} rows refer to nothing, the first in table ${first.table}`);
    handle.pragma(`user_version = ${migration.number}`);
    handle.exec('COMMIT');
    return null;
  } catch (error) {
    if (handle.inTransaction) handle.exec('ROLLBACK');
    return error instanceof Error ? error.message : String(error);
  } finally {
    handle.pragma('foreign_keys = ON');
  }
}
