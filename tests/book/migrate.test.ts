// A migration commits with its version or not at all, and a copy of the older book is kept.
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Migration } from '../../core/book/migration.ts';
import { newestVersion } from '../../core/book/migrate.ts';
import { openBook } from '../../core/book/open.ts';
import { allMigrations } from '../../migrations/all.ts';
import { aFolder, aYard, done, now, opened, openingFigure, rawHandle } from './a-book.ts';

/** What the app makes now, and the two versions after it. */
const newest = newestVersion(allMigrations);
const [next, afterNext] = [newest + 1, newest + 2];
const further: Migration = {
  number: next,
  name: 'colours',
  sql: 'ALTER TABLE component ADD COLUMN colour TEXT',
};
const failing: Migration = {
  number: afterNext,
  name: 'half-way',
  sql: 'CREATE TABLE half (id TEXT) STRICT; INSERT INTO nowhere VALUES (1);',
};

async function dump(file: string): Promise<string> {
  const handle = await rawHandle(file, { readonly: true });
  const tables = handle
    .prepare<[], { name: string; sql: string }>(
      "SELECT name, sql FROM sqlite_schema WHERE type = 'table' ORDER BY name",
    )
    .all();
  const rows = tables.map(({ name, sql }) => [sql, handle.prepare(`SELECT * FROM "${name}"`).all()]);
  return JSON.stringify([handle.pragma('user_version'), rows]);
}

async function aFilledBook(): Promise<string> {
  const file = path.join(aFolder(), 'a.regang');
  const book = await aYard(file);
  await done(book, (writer) => writer.appendMovements([openingFigure()], now));
  await book.close();
  return file;
}

describe('Migrating', () => {
  test('brings a book to the next version and keeps a copy of the one before beside it', async () => {
    const file = await aFilledBook();
    const before = await dump(file);
    const book = await opened(file, { migrations: [...allMigrations, further] });
    expect(book.notice).toContain(`brought to version ${next}`);
    expect((await book.read((reader) => reader.stock())).length).toBe(2);
    await book.close();
    expect(await dump(`${file}.before-migration-${next}`)).toBe(before);
    expect(await dump(file)).toContain('colour');
  });

  test('that fails half-way leaves the book as it was, whole tables compared, and it opens with the older app', async () => {
    const file = await aFilledBook();
    const before = await dump(file);
    const renumbered = { ...failing, number: next };
    const answered = await openBook(file, { mode: 'open', now, migrations: [...allMigrations, renumbered] });
    expect(answered).toMatchObject({ ok: false, error: { code: 'migration-failed' } });
    expect(JSON.stringify(answered)).toContain('no such table: nowhere');
    expect(await dump(file)).toBe(before);
    expect((await opened(file)).readOnly).toBe(false);
  });

  test('stops after the last whole one: the next is done, the one after fails, and the book has the next', async () => {
    const file = await aFilledBook();
    const migrations = [...allMigrations, further, failing];
    const answered = await openBook(file, { mode: 'open', now, migrations });
    expect(JSON.stringify(answered)).toContain(`It is as it was, at version ${next}`);
    expect(await dump(file)).not.toContain('half');
    expect((await opened(file, { migrations: [...allMigrations, further] })).notice).toBeNull();
  });

  test('that would leave a row which refers to nothing is undone', async () => {
    const file = await aFilledBook();
    const before = await dump(file);
    const cutting: Migration = { number: next, name: 'cutting', sql: 'DELETE FROM component' };
    const answered = await openBook(file, { mode: 'open', now, migrations: [...allMigrations, cutting] });
    expect(JSON.stringify(answered)).toContain('3 rows refer to nothing, the first in table movement');
    expect(await dump(file)).toBe(before);
  });

  test('never writes over an earlier copy: the second is named -2', async () => {
    const file = await aFilledBook();
    const migrations = [...allMigrations, { ...failing, number: next }];
    await openBook(file, { mode: 'open', now, migrations });
    await openBook(file, { mode: 'open', now, migrations });
    expect(existsSync(`${file}.before-migration-${next}`)).toBe(true);
    expect(existsSync(`${file}.before-migration-${next}-2`)).toBe(true);
  });

  test('a new book that cannot be made leaves nothing behind', async () => {
    const folder = aFolder();
    const migrations = [...allMigrations, { ...failing, number: next }];
    const answered = await openBook(path.join(folder, 'a.regang'), { mode: 'create', now, migrations });
    expect(answered).toMatchObject({ ok: false, error: { code: 'migration-failed' } });
    expect(readdirSync(folder)).toEqual(['a.regang-writer']);
  });
});

test('The list of migrations holds every file of the folder, numbered 1, 2, 3 ... without gaps', () => {
  const files = readdirSync(path.join(import.meta.dirname, '../../migrations')).filter((each) =>
    /^\d{4}-/u.test(each),
  );
  expect(files.length).toBeGreaterThan(0);
  expect(files.map((each) => Number(each.slice(0, 4)))).toEqual(allMigrations.map((each) => each.number));
  expect(newestVersion(allMigrations)).toBe(files.length);
  expect(() => newestVersion([...allMigrations, failing])).toThrow(`has number ${afterNext}, not ${next}`);
});
