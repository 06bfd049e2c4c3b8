// Migrations 3 and 4 on a book that an app of version 2 made and filled: no row of it is lost or changed, the levels
// by day are what a sum over its movements makes, and the papers of the yard begin empty. Whole tables are compared.
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Handle } from '../../core/book/load-sqlite.ts';
import { setPragmas } from '../../core/book/pragmas.ts';
import { firstTables } from '../../migrations/0001-first-tables.ts';
import { revisionsAndPicks } from '../../migrations/0002-revisions-and-picks.ts';
import { aFolder, done, movement, now, opened, rawHandle } from './a-book.ts';

/** A movement as version 2 wrote it: `at` is of any offset, and its moment stands beside it. */
function oldMovement(
  number: number,
  [from, to, condition, after]: readonly [string, string, string, string],
  quantity: number,
  at: string,
  more: { readonly reason?: string; readonly reverses?: string } = {},
): string {
  const { reason = 'transfer', reverses } = more;
  const basis = reason === 'opening' ? `'counted', '2026-02-27'` : 'NULL, NULL';
  const ms = `${Date.parse(at)}`;
  const back = reverses === undefined ? 'NULL' : `'${reverses}'`;
  return `(${number}, 'm${number}', 'P1', ${quantity}, 'OURS', '${from}', '${to}', '${condition}', '${after}',
    '${reason}', '${at}', ${ms}, 'tester', 'N-${number}', NULL, ${basis}, ${back}, '${now}', 'command-one')`;
}

const movements = [
  oldMovement(1, ['START', 'NORTH', 'ready', 'ready'], 40, '2026-03-01T23:59:59.999Z', { reason: 'opening' }),
  // The same day of the job, the next one of Greenwich.
  oldMovement(2, ['NORTH', 'SITE', 'ready', 'ready'], 15, '2026-03-01T19:30:00-05:00', { reason: 'issue' }),
  oldMovement(3, ['SITE', 'NORTH', 'ready', 'to-clean'], 5, '2026-03-02T08:00:00Z', { reason: 'strip' }),
  // Back where they were on the same day: a level that did not change is still one.
  oldMovement(4, ['NORTH', 'SITE', 'to-clean', 'ready'], 5, '2026-03-02T09:00:00Z', {
    reason: 'reversal',
    reverses: 'm3',
  }),
  oldMovement(5, ['SITE', 'LOST', 'ready', 'ready'], 2, '2026-03-20T12:00:00Z', { reason: 'lost' }),
  // Before 1970, where a division cuts towards zero.
  oldMovement(6, ['HIRE', 'NORTH', 'ready', 'ready'], 7, '1969-12-31T12:00:00Z', { reason: 'delivery' }),
];

const filling = `
INSERT INTO command VALUES (1, 'command-one', 'import.file', '${now}', 'tester', '{}');
INSERT INTO component (code, name, kind, weight_grams, regang_per_piece_h, can_shrink)
  VALUES ('P1', 'Panel', 'panel', 90718, 0.05, 0), ('LK', 'Lock', 'lock', 2268, 0, 0);
INSERT INTO location VALUES ('NORTH', 'North', 'yard'), ('SITE', 'Site', 'site'), ('START', 'Start', 'opening'),
  ('LOST', 'Lost', 'lost'), ('HIRE', 'Depot', 'supplier');
INSERT INTO owner VALUES ('OURS', 'Ours', 'ours', NULL), ('H1', 'Hired', 'supplier', 'A-17');
INSERT INTO movement VALUES ${movements.join(', ')};
INSERT INTO job VALUES ('J1', 'Works', 'America/New_York', 'USD', 'us', '2026-03-02',
  '{"timeZone":"America/New_York","days":[1],"start":"07:00","end":"15:30"}', 4, 6150, 2, 1.5, 24);
`;

async function oldBook(): Promise<string> {
  const file = path.join(aFolder(), 'a.regang');
  await (await opened(file, { mode: 'create', migrations: [firstTables, revisionsAndPicks] })).close();
  const handle = await rawHandle(file);
  setPragmas(handle);
  handle.exec(filling);
  handle.close();
  return file;
}

type Rows = readonly Record<string, unknown>[];

async function tables(file: string): Promise<Record<string, Rows>> {
  const handle: Handle = await rawHandle(file, { readonly: true });
  const names = handle
    .prepare<[], { name: string }>(
      "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY name",
    )
    .all();
  const all = names.map(({ name }): [string, Rows] => [
    name,
    handle.prepare<[], Record<string, unknown>>(`SELECT * FROM "${name}"`).all(),
  ]);
  handle.close();
  return Object.fromEntries(all);
}

const day = (text: string): number => Date.parse(`${text}T00:00:00Z`) / 86_400_000;

/** By hand from the six movements above. */
const levels: readonly (readonly [string, string, string, number])[] = [
  ['HIRE', 'ready', '1969-12-31', -7],
  ['LOST', 'ready', '2026-03-20', 2],
  ['NORTH', 'ready', '1969-12-31', 7],
  ['NORTH', 'ready', '2026-03-01', 47],
  ['NORTH', 'ready', '2026-03-02', 32],
  ['NORTH', 'to-clean', '2026-03-02', 0],
  ['SITE', 'ready', '2026-03-02', 15],
  ['SITE', 'ready', '2026-03-20', 13],
  ['START', 'ready', '2026-03-01', -40],
];

describe('From version 2 on', () => {
  test('every row of every table is as it was; new columns are empty, and so are the new tables', async () => {
    const file = await oldBook();
    const before = await tables(file);
    await (await opened(file)).close();
    const after = await tables(file);
    const added = Object.keys(after).filter((name) => before[name] === undefined);
    for (const [name, rows] of Object.entries(before)) {
      const more = name === 'movement' ? { paper: null } : name === 'component' ? { value_cents: null } : {};
      const expected = rows.map((row) => ({ ...row, ...more }));
      if (name !== 'migration') expect([name, after[name]]).toEqual([name, expected]);
    }
    expect(after['migration']?.slice(2)).toMatchObject([{ number: 3 }, { number: 4 }, { number: 5 }]);
    expect(added).toContain('stock_level');
    for (const name of added)
      if (!['stock_key', 'stock_level'].includes(name)) expect([name, after[name]]).toEqual([name, []]);
  });

  test('the levels are those of the movements, by the day of Greenwich, and what is booked next builds on them', async () => {
    const file = await oldBook();
    const book = await opened(file);
    const { stock_key: keys, stock_level: rows } = await tables(file);
    const found = rows?.map((row) => {
      const key = keys?.find((each) => each['number'] === row['stock_key']);
      return [key?.['location'], key?.['condition'], row['day'], row['quantity']];
    });
    const wanted = levels.map(([place, condition, date, quantity]) => [
      place,
      condition,
      day(date),
      quantity,
    ]);
    expect(found?.map((each) => JSON.stringify(each)).sort()).toEqual(
      wanted.map((each) => JSON.stringify(each)).sort(),
    );
    expect(await book.read((reader) => reader.check())).toEqual([]);
    await done(book, (writer) =>
      writer.appendMovements([movement({ quantity: 30, at: '2026-03-02T10:00:00Z' })], now),
    );
    const stock = await book.read((reader) => reader.stock());
    const there = stock.map(({ location, condition, quantity }) => [location, condition, quantity]);
    expect(there).toContainEqual(['NORTH', 'ready', 2]);
    expect(there).toContainEqual(['SITE', 'ready', 43]);
    expect(await book.read((reader) => reader.check())).toEqual([]);
  });
});

describe('What the tables of version 4 refuse, by SQL past the app', () => {
  test.each([
    ["UPDATE movement SET paper = 'x'", 'never changed'],
    ['DELETE FROM movement', 'never removed'],
    ["INSERT INTO stock_key VALUES (99, 'P9', 'OURS', 'NORTH', 'ready')", 'FOREIGN KEY'],
    ["INSERT INTO stock_key VALUES (99, 'P1', 'OURS', 'NORTH', 'shiny')", 'CHECK'],
    ['INSERT INTO stock_key SELECT 99, component, owner, location, condition FROM stock_key', 'UNIQUE'],
    ['INSERT INTO stock_level VALUES (99, 1, 1)', 'FOREIGN KEY'],
    ['UPDATE stock_level SET quantity = 9007199254740992', 'CHECK'],
    ["UPDATE location SET kind = 'gang' WHERE code = 'NORTH'", 'keeps its kind'],
    ["UPDATE owner SET kind = 'mine'", 'CHECK'],
    ['UPDATE component SET value_cents = -1', 'CHECK'],
  ])('%s', async (sql, why) => {
    const file = await oldBook();
    await (await opened(file)).close();
    const before = await tables(file);
    const handle = await rawHandle(file);
    setPragmas(handle);
    expect(() => handle.exec(sql)).toThrow(why);
    handle.close();
    expect(await tables(file)).toEqual(before);
  });
});
