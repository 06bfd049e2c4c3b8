// The stock of some components and locations is what a sieve over the whole stock leaves, at any moment of the demo.
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { openBookFile } from '../../core/host/open-book-file.ts';
import { makeDemo } from '../../seed-demo/make-demo.ts';

test('lines of LK and R8 wherever they are, and of everything in the repair shop', async () => {
  const file = path.join(mkdtempSync(path.join(tmpdir(), 'regang-stock-')), 'B.regang');
  const at = '2026-02-23T07:00:00-05:00';
  const made = await makeDemo(file, { at, who: 'tester' });
  if (!made.ok) throw new Error(made.error.message);
  const opened = await openBookFile(file, 'open', at);
  if (!opened.ok) throw new Error(opened.error.message);
  const book = opened.value;
  try {
    const only = { components: ['LK', 'R8'], locations: ['REP'] };
    let lines = 0;
    for (const moment of [
      undefined,
      '2026-02-19T00:00:00Z',
      '2026-02-21T00:00:00Z',
      '2026-03-12T14:00:00Z',
    ]) {
      const [whole, some] = await book.read(async (reader) => [
        await reader.stock(moment),
        await reader.stock(moment, only),
      ]);
      expect(some).toEqual(
        whole.filter((line) => only.components.includes(line.component) || line.location === 'REP'),
      );
      lines += some.length;
    }
    expect(lines).toBeGreaterThan(10);
    expect(await book.read((reader) => reader.stock(undefined, { components: [], locations: [] }))).toEqual(
      [],
    );
  } finally {
    await book.close();
  }
});
