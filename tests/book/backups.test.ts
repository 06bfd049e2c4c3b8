// Copies of the book: whole, of one finished state, one a day, ten kept.
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { keepBackup } from '../../core/book/keep-backups.ts';
import type { OpenBook } from '../../core/book/open.ts';
import { aFolder, aYard, done, movement, now, opened, openingFigure, run } from './a-book.ts';

const at = (day: string): string => `${day}T17:00:00-05:00`;

async function backup(book: OpenBook, day: string): Promise<string> {
  const kept = await keepBackup(book, at(day));
  if (!kept.ok) throw new Error(kept.error.message);
  return kept.value.made ? path.basename(kept.value.file ?? '') : 'none made';
}

const change = (book: OpenBook): Promise<void> =>
  done(book, (writer) => writer.appendMovements([openingFigure()], now));

describe('A copy of the book', () => {
  test('opens as a book with everything in it, and nothing lies beside it', async () => {
    const folder = aFolder();
    const book = await aYard(path.join(folder, 'a.regang'));
    await change(book);
    const copy = path.join(folder, 'copies.regang');
    expect(await book.backup(copy)).toEqual({ ok: true, value: { file: copy } });
    expect(readdirSync(folder).filter((each) => each.startsWith('copies'))).toEqual(['copies.regang']);
    const copied = await opened(copy);
    expect(await copied.read((reader) => reader.stock())).toEqual(
      await book.read((reader) => reader.stock()),
    );
    expect(await copied.read((reader) => reader.check())).toEqual([]);
  });

  test('is never written over a file that is there, the book itself least of all', async () => {
    const folder = aFolder();
    const book = await aYard(path.join(folder, 'a.regang'));
    const other = path.join(folder, 'other.txt');
    writeFileSync(other, 'mine');
    for (const file of [other, book.file])
      expect(await book.backup(file)).toMatchObject({ ok: false, error: { code: 'file-exists' } });
    expect(readFileSync(other, 'utf8')).toBe('mine');
    const nowhere = await book.backup(path.join(folder, 'none', 'a.regang'));
    expect(nowhere).toMatchObject({ ok: false, error: { code: 'copy-failed' } });
  });

  test('asked for during a command holds all of that command or nothing of it', async () => {
    const folder = aFolder();
    const book = await aYard(path.join(folder, 'a.regang'));
    const copy = path.join(folder, 'b.regang');
    const command = run(book, async (writer) => {
      await writer.appendMovements([openingFigure({ quantity: 40 })], now);
      await new Promise((resolve) => setTimeout(resolve, 20));
      await writer.appendMovements([movement({ quantity: 40 })], now);
      return { ok: true, value: null };
    });
    const copied = book.backup(copy);
    await Promise.all([command, copied]);
    expect((await (await opened(copy)).read((reader) => reader.movements({ limit: 9 }))).length).toBe(2);
  });
});

describe('Daily copies', () => {
  test('are made where something changed, the day’s last replacing its first', async () => {
    const book = await aYard(path.join(aFolder(), 'a.regang'));
    expect(await backup(book, '2026-03-02')).toBe('a-2026-03-02-0001.regang');
    expect(await backup(book, '2026-03-02')).toBe('none made');
    expect(await backup(book, '2026-03-03')).toBe('none made');
    await change(book);
    expect(await backup(book, '2026-03-03')).toBe('a-2026-03-03-0001.regang');
    await change(book);
    expect(await backup(book, '2026-03-03')).toBe('a-2026-03-03-0002.regang');
    expect(readdirSync(path.join(path.dirname(book.file), 'backups')).sort()).toEqual([
      'a-2026-03-02-0001.regang',
      'a-2026-03-03-0002.regang',
    ]);
  });

  test('are kept for the ten newest days, and other files in the folder are left alone', async () => {
    const folder = aFolder();
    const book = await aYard(path.join(folder, 'a.regang'));
    const backups = path.join(folder, 'backups');
    await backup(book, '2026-03-01');
    const others = ['a-notes.regang', 'ab-2026-01-01-0001.regang', 'a-2026-01-01-0001.txt'];
    for (const other of others) writeFileSync(path.join(backups, other), 'mine');
    const days = Array.from({ length: 12 }, (_, index) => `2026-03-${String(index + 2).padStart(2, '0')}`);
    for (const day of days) {
      await change(book);
      await backup(book, day);
    }
    const left = readdirSync(backups).filter((each) => !others.includes(each));
    expect(left.sort()).toEqual(days.slice(2).map((day) => `a-${day}-0001.regang`));
    expect(others.every((other) => existsSync(path.join(backups, other)))).toBe(true);
  });

  test('are not made by one who only reads', async () => {
    const file = path.join(aFolder(), 'a.regang');
    await aYard(file);
    const reader = await opened(file);
    expect(await keepBackup(reader, at('2026-03-02'))).toEqual({
      ok: true,
      value: { file: null, made: false },
    });
    expect(existsSync(path.join(path.dirname(file), 'backups'))).toBe(false);
  });
});
