// Whether a book has every table, index and trigger that the migrations make, each as they make it: a
// guard that somebody took off is found, and not only what went wrong without it.
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import type { BookProblem } from './book.ts';
import { loadSqlite } from './load-sqlite.ts';
import type { Migration } from './migration.ts';
import type { BookTables } from './tables.ts';

interface Part {
  readonly type: string;
  readonly name: string;
  readonly sql: string;
}

const parts = "select type, name, sql from sqlite_schema where sql is not null and name not like 'sqlite%'";

export async function checkSchema(
  db: Kysely<BookTables>,
  migrations: readonly Migration[],
): Promise<readonly BookProblem[]> {
  const [wanted, { rows }] = await Promise.all([
    partsOfANewBook(migrations),
    sql.raw<Part>(parts).execute(db),
  ]);
  const there = new Map(rows.map((part) => [part.name, part]));
  const names = new Set(wanted.map((part) => part.name));
  return [
    ...wanted.flatMap((part) => {
      const found = there.get(part.name);
      if (found === undefined) return problem(`The ${part.type} ${part.name} is missing.`);
      return found.sql === part.sql ? [] : problem(`The ${part.type} ${part.name} was changed.`);
    }),
    ...rows
      .filter((part) => !names.has(part.name))
      .flatMap((part) => problem(`The ${part.type} ${part.name} does not belong to a book.`)),
  ].slice(0, 20);
}

async function partsOfANewBook(migrations: readonly Migration[]): Promise<readonly Part[]> {
  const sqlite = await loadSqlite();
  if (!sqlite.ok) throw new Error(sqlite.error.message);
  const handle = sqlite.value(':memory:', {});
  try {
    for (const migration of migrations) handle.exec(migration.sql);
    const made = handle.prepare<[], Part>(parts).all();
    if (made.length === 0) throw new Error('The migrations made nothing to compare with.');
    return made;
  } finally {
    handle.close();
  }
}

function problem(message: string): readonly BookProblem[] {
  return [{ check: 'integrity', message }];
}
