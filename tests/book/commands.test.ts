// A command is one transaction, done once whatever the number of times it is sent.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { refuse } from '../../core/answer.ts';
import type { OpenBook } from '../../core/book/open.ts';
import {
  aFolder,
  aYard,
  component,
  done,
  movement,
  now,
  opened,
  openingFigure,
  rawHandle,
  run,
} from './a-book.ts';

const stocked = async (): Promise<OpenBook> => {
  const book = await aYard(path.join(aFolder(), 'a.regang'));
  await done(book, (writer) => writer.appendMovements([openingFigure({ quantity: 40 })], now));
  return book;
};

const codes = (book: OpenBook): Promise<string[]> =>
  book.read(async (reader) => (await reader.components()).map((each) => each.code));

describe('A command', () => {
  test('that answers a refusal leaves nothing of what it wrote, and the change number where it was', async () => {
    const book = await stocked();
    const before = await book.read((reader) => reader.changeNumber());
    const answered = await run(book, async (writer) => {
      await writer.putComponent(component('P3'));
      await writer.appendMovements([movement()], now);
      return refuse('not-now', 'Not now.');
    });
    expect(answered).toEqual({ ok: false, error: { code: 'not-now', message: 'Not now.' } });
    expect(await codes(book)).toEqual(['P1', 'P2']);
    expect(await book.read((reader) => reader.changeNumber())).toBe(before);
    expect((await book.read((reader) => reader.movements({ limit: 9 }))).length).toBe(1);
  });

  test('that throws leaves nothing either, throws on, and the next one runs', async () => {
    const book = await stocked();
    const failing = run(book, async (writer) => {
      await writer.putComponent(component('P3'));
      throw new Error('a bug');
    });
    await expect(failing).rejects.toThrow('a bug');
    expect(await codes(book)).toEqual(['P1', 'P2']);
    await done(book, (writer) => writer.putComponent(component('P4')));
    expect(await codes(book)).toEqual(['P1', 'P2', 'P4']);
  });

  test('sent twice is done once and answered twice with the first answer', async () => {
    const book = await stocked();
    const send = (): ReturnType<typeof run<{ booked: string }>> =>
      run(
        book,
        async (writer) => {
          const next = movement({ quantity: 1 });
          await writer.appendMovements([next], now);
          return { ok: true, value: { booked: next.id } };
        },
        'sent-twice',
      );
    const first = await send();
    const changeNumber = await book.read((reader) => reader.changeNumber());
    const second = await send();
    expect(first).toMatchObject({ ok: true, repeated: false });
    expect(second).toEqual({ ...first, repeated: true });
    expect(await book.read((reader) => reader.changeNumber())).toBe(changeNumber);
    expect((await book.read((reader) => reader.movements({ limit: 9 }))).length).toBe(2);
  });

  test('sent twice at the same moment is done once', async () => {
    const book = await stocked();
    const send = (): ReturnType<typeof run<null>> =>
      run(
        book,
        async (writer) => {
          await writer.appendMovements([movement()], now);
          return { ok: true, value: null };
        },
        'at-the-same-moment',
      );
    const answers = await Promise.all([send(), send(), send()]);
    expect(answers.map((each) => each.ok && each.repeated)).toEqual([false, true, true]);
    expect((await book.read((reader) => reader.movements({ limit: 9 }))).length).toBe(2);
  });

  test('refused is not remembered: the same id may be tried again', async () => {
    const book = await stocked();
    const take = (quantity: number): ReturnType<typeof run<null>> =>
      run(
        book,
        async (writer) => {
          await writer.appendMovements([movement({ quantity })], now);
          return { ok: true, value: null };
        },
        'tried-again',
      );
    expect(await take(41)).toMatchObject({ ok: false, error: { code: 'not-enough' } });
    expect(await take(40)).toEqual({ ok: true, value: null, repeated: false });
  });

  test('that writes nothing, as a trial does, is answered and leaves the file byte for byte', async () => {
    const book = await stocked();
    await book.close();
    const before = readFileSync(book.file);
    const again = await opened(book.file);
    const changeNumber = await again.read((reader) => reader.changeNumber());
    const answered = await run(again, async (writer) => ({ ok: true, value: (await writer.jobs()).length }));
    expect(answered).toEqual({ ok: true, value: 0, repeated: false });
    expect(await again.read((reader) => reader.changeNumber())).toBe(changeNumber);
    await again.close();
    expect(readFileSync(book.file).equals(before)).toBe(true);
  });

  test('holds the writer’s lock of the file from its start, so that nothing is met half-way', async () => {
    const book = await stocked();
    const other = await rawHandle(book.file);
    other.pragma('busy_timeout = 0');
    await done(book, () => {
      expect(() => other.exec('BEGIN IMMEDIATE')).toThrow('locked');
      return Promise.resolve();
    });
    expect(() => other.exec('BEGIN IMMEDIATE; ROLLBACK')).not.toThrow();
  });

  test('with the id of a command of another name is refused', async () => {
    const book = await stocked();
    const first = await run(
      book,
      async (writer) => {
        await writer.putComponent(component('P3'));
        return { ok: true, value: 1 };
      },
      'the-id',
    );
    expect(first.ok).toBe(true);
    const other = { commandId: 'the-id', name: 'other', at: now, who: 'tester' };
    const answered = await book.command(other, () => Promise.resolve({ ok: true, value: 2 }));
    expect(answered).toMatchObject({ ok: false, error: { code: 'command-id-used' } });
  });

  test('that names an unknown code is refused as a value and leaves nothing', async () => {
    const book = await stocked();
    const answered = await run(book, async (writer) => {
      await writer.putPlan({ id: 'plan-1', job: 'NO-JOB', madeAt: now, input: {}, answer: {} });
      return { ok: true, value: null };
    });
    expect(answered).toMatchObject({ ok: false, error: { code: 'names-unknown' } });
  });

  test('asked for in the midst of another is a bug that throws, and does not wait for ever', async () => {
    const book = await stocked();
    const outer = run(book, async () => {
      await done(book, (writer) => writer.putComponent(component('P3')));
      return { ok: true, value: null };
    });
    await expect(outer).rejects.toThrow('in its midst');
  });

  test('whose writer is used after its end throws', async () => {
    const book = await stocked();
    let kept: (() => Promise<void>) | null = null;
    await done(book, (writer) => {
      kept = () => writer.putComponent(component('P9'));
      return Promise.resolve();
    });
    expect(kept).not.toBeNull();
    await expect((kept as unknown as () => Promise<void>)()).rejects.toThrow();
    expect(await codes(book)).toEqual(['P1', 'P2']);
  });
});

describe('Reading during a command', () => {
  test('neither waits for it nor sees it before it is done, inside the command or beside it', async () => {
    const book = await stocked();
    const seen: string[][] = [];
    await done(book, async (writer) => {
      await writer.putComponent(component('P3'));
      seen.push(await codes(book));
      seen.push((await writer.components()).map((each) => each.code));
    });
    seen.push(await codes(book));
    expect(seen).toEqual([
      ['P1', 'P2'],
      ['P1', 'P2', 'P3'],
      ['P1', 'P2', 'P3'],
    ]);
  });

  test('sees one state to its end, however many commands are done meanwhile', async () => {
    const book = await stocked();
    const counts = await book.read(async (reader) => {
      const before = (await reader.components()).length;
      await done(book, (writer) => writer.putComponent(component('P3')));
      return [before, (await reader.components()).length, (await codes(book)).length];
    });
    expect(counts).toEqual([2, 2, 3]);
  });

  test('five readers at once, one within another, all get their answer', async () => {
    const book = await stocked();
    const nested = (depth: number): Promise<number> =>
      book.read(async (reader) => (depth === 0 ? (await reader.owners()).length : nested(depth - 1)));
    expect(await Promise.all([nested(4), nested(0), nested(2)])).toEqual([2, 2, 2]);
  });

  test('twenty commands at once are done one after another, each seeing the one before', async () => {
    const book = await stocked();
    const all = Array.from({ length: 20 }, () =>
      run(book, async (writer) => {
        const there = (await writer.stock()).find((line) => line.location === 'NORTH')?.quantity ?? 0;
        await writer.appendMovements([movement({ quantity: 2 })], now);
        return { ok: true, value: there };
      }),
    );
    const seen = (await Promise.all(all)).map((each) => (each.ok ? each.value : null));
    expect(seen).toEqual(Array.from({ length: 20 }, (_, index) => 40 - 2 * index));
  });
});

test('No answer of the book holds a BigInt, which JSON cannot carry', async () => {
  const book = await stocked();
  const all = await book.read(async (reader) => [
    await reader.stock(),
    await reader.movements({ limit: 5 }),
    await reader.changeNumber(),
    await reader.locations(),
  ]);
  expect(JSON.stringify(all)).toContain('"quantity":40');
});
