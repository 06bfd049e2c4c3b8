// Migration 2 on a book that an app of version 1 made and filled: no row of it is lost or changed, and every
// design has its first saved state. Whole tables are compared.
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Handle } from '../../core/book/load-sqlite.ts';
import { setPragmas } from '../../core/book/pragmas.ts';
import { firstTables } from '../../migrations/0001-first-tables.ts';
import { revisionsAndPicks } from '../../migrations/0002-revisions-and-picks.ts';
import { aFolder, now, opened, rawHandle } from './a-book.ts';

const geometry = JSON.stringify({
  panels: [{ panel: 'P1', xNm: 0, yNm: 0, onSide: false }],
  fillers: [],
  edges: { left: 'open', right: 'open' },
  equalised: false,
});

/** One or two rows of every table of version 1, as its app wrote them. */
const filling = `
INSERT INTO command VALUES (1, 'command-one', 'import.file', '${now}', 'tester', '{}');
INSERT INTO component VALUES
  ('P1', 'Panel', 'panel', 90718, 914400000, 2438400000, NULL, '[0,1]', '[[1,2]]', 'S', 165, 0.05, NULL),
  ('LK', 'Lock', 'lock', 2268, NULL, NULL, NULL, NULL, NULL, NULL, NULL, 0.01, 'small');
INSERT INTO rule_version VALUES
  ('S', 1, 'System', '{}'), ('S', 2, 'System', '{"ties":{"holes":true}}'), ('T', 7, 'Other', '{}');
INSERT INTO location VALUES ('YARD', 'Yard', 'yard'), ('START', 'Start', 'opening');
INSERT INTO owner VALUES ('OURS', 'Ours', 'ours', NULL);
INSERT INTO movement VALUES
  (1, 'm1', 'P1', 40, 'OURS', 'START', 'YARD', 'ready', 'ready', 'opening', '${now}', unixepoch('${now}') * 1000,
   'tester', NULL, NULL, 'counted', '2026-03-01', NULL, '${now}', 'command-one');
INSERT INTO design VALUES
  ('G1', 'Long wall', 'S', 'B', 'left', '${geometry}', 6.25, 3),
  ('G2', 'Column', 'NONE', '', 'symmetrical', '${geometry}', 0, 0);
INSERT INTO job VALUES ('J1', 'Works', 'America/New_York', 'USD', 'us', '2026-03-02',
  '{"timeZone":"America/New_York","days":[1],"start":"07:00","end":"15:30"}', 4, 6150, 2, 1.5, 24);
INSERT INTO pour VALUES
  ('J1', 'A', 1, 'First', 'wall', 'face-first', '${now}', 36, 2, 'LK'),
  ('J1', 'B', 2, 'Second', 'wall', 'steel-first', '${now}', 36, 2, NULL);
INSERT INTO pour_side VALUES ('J1', 'A', 'A', '${now}', 4), ('J1', 'A', 'B', '${now}', 4),
  ('J1', 'B', 'A', '${now}', 4), ('J1', 'B', 'B', '${now}', 4);
INSERT INTO placed_gang VALUES ('J1', 'A', 'A', 1, 'G1', -5);
INSERT INTO gate VALUES ('J1', 'A', 1, 'Steel', 'Fixers', 'close', '2026-03-04', 1);
INSERT INTO loose_line VALUES ('J1', 'A', 1, 'both', 'LK', 12, 'locks');
INSERT INTO pour_after VALUES ('J1', 'B', 1, 'A');
INSERT INTO stored_plan VALUES (1, 'plan-1', 'J1', '${now}', '{}', '{"runs":[]}');
`;

async function oldBook(): Promise<string> {
  const file = path.join(aFolder(), 'a.regang');
  await (await opened(file, { mode: 'create', migrations: [firstTables] })).close();
  const handle = await rawHandle(file);
  setPragmas(handle);
  handle.exec(filling);
  handle.close();
  return file;
}

function tablesOf(handle: Handle): Record<string, readonly Record<string, unknown>[]> {
  const names = handle
    .prepare<[], { name: string }>(
      "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY name",
    )
    .all();
  return Object.fromEntries(
    names.map(({ name }) => [
      name,
      handle.prepare<[], Record<string, unknown>>(`SELECT * FROM "${name}"`).all(),
    ]),
  );
}

async function tables(file: string) {
  const handle = await rawHandle(file, { readonly: true });
  const all = tablesOf(handle);
  handle.close();
  return all;
}

describe('From version 1 to 2', () => {
  test('every row of every table is as it was, and a design has its first state with the rule tables then in force', async () => {
    const file = await oldBook();
    const before = await tables(file);
    for (const [name, rows] of Object.entries(before)) expect([name, rows.length > 0]).toEqual([name, true]);
    const book = await opened(file, { migrations: [firstTables, revisionsAndPicks] });
    expect(book.notice).toContain('brought to version 2');
    await book.close();
    const { migration, component, design_revision, crane, pick_setup, ...others } = await tables(file);
    const { migration: migrated, component: components, ...unchanged } = before;
    expect(others).toEqual(unchanged);
    expect(migration).toEqual([...(migrated ?? []), { number: 2, name: 'revisions and picks', at: now }]);
    const columns = { pressure_pa: null, pressure_on_side_pa: null, can_shrink: 0 };
    expect(component).toEqual(components?.map((row) => ({ ...row, ...columns })));
    expect([crane, pick_setup]).toEqual([[], []]);
    const first = { number: 1, geometry, command: null };
    expect(design_revision).toEqual([
      { ...first, ...facts('G1', 'Long wall', 'S', 'B', 'left', 6.25, 3), rule_version: 2 },
      { ...first, ...facts('G2', 'Column', 'NONE', '', 'symmetrical', 0, 0), rule_version: 0 },
    ]);
    const reader = await opened(file);
    expect(await reader.read((read) => read.check())).toEqual([]);
    const states = await reader.read((read) => read.designRevisions('G1'));
    expect(states).toMatchObject([{ code: 'G1', number: 1, ruleVersion: 2, savedAt: null, who: null }]);
  });
});

function facts(
  design: string,
  name: string,
  system: string,
  revision: string,
  hand: string,
  assemble: number,
  breakDown: number,
) {
  return { design, name, system, revision, hand, assemble_h: assemble, break_down_h: breakDown };
}

async function migratedBook(): Promise<Handle> {
  const file = await oldBook();
  await (await opened(file)).close();
  const handle = await rawHandle(file);
  setPragmas(handle);
  handle.exec(`INSERT INTO pick_setup VALUES ('G2', '{}')`);
  return handle;
}

describe('What the tables of version 2 refuse, by SQL past the app', () => {
  test.each([
    ['UPDATE design_revision SET revision = ?', 'never changed'],
    ['UPDATE OR REPLACE design_revision SET number = 1', 'never changed'],
    ['DELETE FROM design_revision', 'never removed'],
    [
      "INSERT OR REPLACE INTO design_revision SELECT design, number, 'x', system, revision, hand, geometry, 0, 0, 0, NULL FROM design_revision",
      'never removed',
    ],
    [
      'INSERT INTO design_revision SELECT design, 0, name, system, revision, hand, geometry, 0, 0, 0, NULL FROM design_revision LIMIT 1',
      'CHECK',
    ],
    [
      "INSERT INTO design_revision SELECT design, 9, name, system, revision, 'both', geometry, 0, 0, 0, NULL FROM design_revision LIMIT 1",
      'CHECK',
    ],
    [
      "INSERT INTO design_revision SELECT design, 9, name, system, revision, hand, 'no JSON', 0, 0, 0, NULL FROM design_revision LIMIT 1",
      'CHECK',
    ],
    [
      "INSERT INTO design_revision SELECT design, 9, name, system, revision, hand, geometry, 0, 0, 0, 'none' FROM design_revision LIMIT 1",
      'FOREIGN KEY',
    ],
    ["INSERT INTO pick_setup VALUES ('NONE', '{}')", 'FOREIGN KEY'],
    ["INSERT INTO pick_setup VALUES ('G1', 'no JSON')", 'CHECK'],
    ["INSERT INTO crane VALUES (' ', '{}')", 'CHECK'],
    ["INSERT INTO crane VALUES ('K1', 'no JSON')", 'CHECK'],
    ['UPDATE component SET pressure_pa = 0', 'CHECK'],
    ['UPDATE component SET pressure_on_side_pa = -1', 'CHECK'],
    ['UPDATE component SET can_shrink = 2', 'CHECK'],
    ["DELETE FROM design WHERE code = 'G1'", 'FOREIGN KEY'],
  ])('%s', async (sql, why) => {
    const handle = await migratedBook();
    const before = tablesOf(handle);
    const values = sql.includes('?') ? ['X'] : [];
    expect(() => handle.prepare(sql).run(...values)).toThrow(why);
    expect(tablesOf(handle)).toEqual(before);
  });

  test('a design taken out takes how it is picked with it, and leaves its states', async () => {
    const handle = await migratedBook();
    handle.exec("DELETE FROM design WHERE code = 'G2'");
    const { pick_setup: picks, design_revision: states, design } = tablesOf(handle);
    expect(picks).toEqual([]);
    expect(design?.map((row) => row['code'])).toEqual(['G1']);
    expect(states?.map((row) => row['design'])).toEqual(['G1', 'G2']);
  });
});
