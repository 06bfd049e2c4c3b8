// What is opened as a book and what is refused; a refused file is left byte for byte as it was.
import {
  copyFileSync,
  existsSync,
  readFileSync,
  readdirSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadSqlite, nodeRefusal } from '../../core/book/load-sqlite.ts';
import { newestVersion } from '../../core/book/migrate.ts';
import { openBook } from '../../core/book/open.ts';
import { setPragmas } from '../../core/book/pragmas.ts';
import { allMigrations } from '../../migrations/all.ts';
import { aFolder, aYard, now, opened, openingFigure, rawHandle, done } from './a-book.ts';

async function refusalCode(
  file: string,
  mode: 'create' | 'open' | 'open-or-create' = 'open',
): Promise<string> {
  const answered = await openBook(file, { mode, now });
  if (answered.ok) await answered.value.close();
  return answered.ok ? 'opened' : answered.error.code;
}

describe('A Node that is too old', () => {
  test('with Node-API 9 is refused before the library is loaded, which would end the process', () => {
    expect(nodeRefusal({ node: '20.20.2', napi: '9' })).toMatchObject({ code: 'node-too-old' });
    expect(nodeRefusal({ node: '20.20.2', napi: '9' })?.message).toContain('Node 22.14 or newer');
    expect(nodeRefusal({ node: '22.14.0', napi: '10' })).toBeNull();
  });
});

describe('Opening', () => {
  test('makes a new book, which is there afterwards with nothing else but its lock beside it', async () => {
    const folder = aFolder();
    const file = path.join(folder, 'new.regang');
    const book = await opened(file, { mode: 'create' });
    expect(book.readOnly).toBe(false);
    expect(await book.read((reader) => reader.changeNumber())).toBe(0);
    await book.close();
    expect(readdirSync(folder).sort()).toEqual(['new.regang', 'new.regang-writer']);
    expect(await refusalCode(file, 'create')).toBe('book-exists');
    expect(await refusalCode(file)).toBe('opened');
  });

  test('refuses a file that is not there, and a folder that is not there, and makes neither', async () => {
    const folder = aFolder();
    expect(await refusalCode(path.join(folder, 'none.regang'))).toBe('no-such-book');
    expect(await refusalCode(path.join(folder, 'none', 'a.regang'), 'create')).toBe('no-such-folder');
    expect(readdirSync(folder)).toEqual([]);
  });

  test.each([
    ['a stock list', 'component,quantity\nP1,20\n'.repeat(400)],
    ['an empty file', ''],
    ['a few bytes', 'SQLite format 3\0'],
  ])('refuses %s as not a book and leaves it', async (_, text) => {
    const file = path.join(aFolder(), 'list.csv');
    writeFileSync(file, text);
    expect(await refusalCode(file)).toBe('not-a-book');
    expect(await refusalCode(file, 'open-or-create')).toBe('not-a-book');
    expect(readFileSync(file, 'utf8')).toBe(text);
  });

  test('refuses a folder', async () => {
    expect(await refusalCode(aFolder())).toBe('not-a-book');
  });

  test("refuses another application's database and leaves every byte of it", async () => {
    const file = path.join(aFolder(), 'other.db');
    const sqlite = await loadSqlite();
    if (!sqlite.ok) throw new Error(sqlite.error.message);
    const other = sqlite.value(file, {});
    other.exec('PRAGMA application_id = 77; CREATE TABLE movement (id TEXT); PRAGMA user_version = 1');
    other.close();
    const before = readFileSync(file);
    expect(await refusalCode(file)).toBe('not-a-book');
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  test('refuses a book of the version after the newest that it knows, and says both', async () => {
    const file = path.join(aFolder(), 'a.regang');
    await (await opened(file)).close();
    const handle = await rawHandle(file);
    const newest = newestVersion(allMigrations);
    handle.pragma(`user_version = ${newest + 1}`);
    const answered = await openBook(file, { mode: 'open', now });
    expect(answered).toMatchObject({ ok: false, error: { code: 'book-newer' } });
    expect(JSON.stringify(answered)).toContain(
      `it has version ${newest + 1}, this one knows up to ${newest}`,
    );
  });

  test('refuses a book cut short, or with a torn page, as damaged and leaves every byte of it', async () => {
    const folder = aFolder();
    const file = path.join(folder, 'a.regang');
    const book = await aYard(file);
    await done(book, (writer) => writer.appendMovements(many(500), now));
    await book.close();
    const cut = path.join(folder, 'cut.regang');
    copyFileSync(file, cut);
    truncateSync(cut, Math.floor(statSync(cut).size / 2));
    const cutALittle = path.join(folder, 'cut-a-little.regang');
    copyFileSync(file, cutALittle);
    truncateSync(cutALittle, statSync(cutALittle).size - 100);
    const torn = path.join(folder, 'torn.regang');
    const bytes = readFileSync(file);
    bytes.fill(0xa5, 4096 * 20, 4096 * 21);
    writeFileSync(torn, bytes);
    for (const damaged of [cut, cutALittle, torn]) {
      const before = readFileSync(damaged);
      expect(await refusalCode(damaged)).toBe('book-damaged');
      expect(readFileSync(damaged).equals(before)).toBe(true);
    }
  });

  test('does not make a new book over the log of an old one, which would be played into it', async () => {
    const file = path.join(aFolder(), 'a.regang');
    writeFileSync(`${file}-wal`, 'what an old book left behind');
    expect(await refusalCode(file, 'create')).toBe('log-of-another-book');
    expect(existsSync(file)).toBe(false);
  });
});

test('On the second opening commits are still on disk before they are acknowledged: synchronous is FULL (2)', async () => {
  const file = path.join(aFolder(), 'a.regang');
  await (await opened(file)).close();
  const handle = await rawHandle(file);
  // The library's own default, for which the pragma is needed; were it 2 this test would prove nothing.
  expect(handle.pragma('synchronous', { simple: true })).toBe(1);
  setPragmas(handle);
  const read = (name: string): unknown => handle.pragma(name, { simple: true });
  expect(['synchronous', 'foreign_keys', 'recursive_triggers', 'trusted_schema'].map(read)).toEqual([
    2, 1, 1, 0,
  ]);
  expect(read('journal_mode')).toBe('wal');
});

describe('A second opening of the same book while the first writes', () => {
  test('reads and says so, sees what the first commits, and is refused to write', async () => {
    const file = path.join(aFolder(), 'a.regang');
    const first = await aYard(file);
    const second = await opened(file);
    expect(second.readOnly).toBe(true);
    expect(second.notice).toContain('open for reading only');
    await done(first, (writer) =>
      writer.putOwner({ code: 'H2', name: 'New', kind: 'supplier', agreement: null }),
    );
    expect((await second.read((reader) => reader.owners())).map((owner) => owner.code)).toEqual([
      'H1',
      'H2',
      'OURS',
    ]);
    const meta = { commandId: 'from-the-second', name: 'test', at: now, who: 'tester' };
    const refused = await second.command(meta, () => Promise.resolve({ ok: true, value: null }));
    expect(refused).toMatchObject({ ok: false, error: { code: 'book-read-only' } });
    await first.close();
    await second.close();
    expect((await opened(file)).readOnly).toBe(false);
  });
});

function many(count: number): ReturnType<typeof openingFigure>[] {
  return Array.from({ length: count }, () => openingFigure({ remark: 'x'.repeat(100) }));
}
