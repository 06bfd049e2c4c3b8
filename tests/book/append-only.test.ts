// The ledger attacked past the app, by SQL on the file: nothing changes a movement, and nothing that must
// never be gets in. Run with the settings that every connection of the book has.
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { setPragmas } from '../../core/book/pragmas.ts';
import type { Handle } from '../../core/book/load-sqlite.ts';
import { aFolder, aYard, done, movement, now, openingFigure, rawHandle } from './a-book.ts';

async function attacked(): Promise<Handle> {
  const file = path.join(aFolder(), 'a.regang');
  const book = await aYard(file);
  await done(book, async (writer) => {
    await writer.appendMovements([openingFigure({ id: 'first', quantity: 40 })], now);
    await writer.appendMovements([movement({ id: 'second' })], now);
    await writer.putRules('S', 'System', {});
  });
  await book.close();
  const handle = await rawHandle(file);
  setPragmas(handle);
  return handle;
}

const columns = `number, id, component, quantity, owner, from_location, to_location, condition, condition_after,
  reason, at, at_ms, who, note_number, remark, basis, basis_date, reverses, paper, recorded_at, command`;

const row: Readonly<Record<string, string | number | null>> = {
  number: 3,
  id: 'third',
  component: 'P1',
  quantity: 1,
  owner: 'OURS',
  from_location: 'NORTH',
  to_location: 'SITE',
  condition: 'ready',
  condition_after: 'ready',
  reason: 'issue',
  at: '2026-03-02T07:00:00-05:00',
  at_ms: 1_772_452_800_000,
  who: 'tester',
  note_number: null,
  remark: null,
  basis: null,
  basis_date: null,
  reverses: null,
  paper: null,
  recorded_at: '2026-03-02T07:00:00-05:00',
  command: '',
};

function insert(
  handle: Handle,
  more: Readonly<Record<string, string | number | null>>,
  verb = 'INSERT',
): void {
  const command = handle.prepare<[], { id: string }>('SELECT id FROM command LIMIT 1').get()?.id ?? '';
  const values = Object.values({ ...row, command, ...more });
  handle
    .prepare(`${verb} INTO movement (${columns}) VALUES (${values.map(() => '?').join(', ')})`)
    .run(...values);
}

const dump = (handle: Handle): string => JSON.stringify(handle.prepare('SELECT * FROM movement').all());

describe('A booked movement', () => {
  test.each([
    ['updated', 'UPDATE movement SET quantity = 1 WHERE id = ?', 'never changed'],
    ['updated to what it is', 'UPDATE movement SET id = id WHERE id = ?', 'never changed'],
    ['deleted', 'DELETE FROM movement WHERE id = ?', 'never removed'],
    ['replaced by its own copy', `REPLACE INTO movement SELECT * FROM movement WHERE id = ?`, 'never'],
    ['updated or replaced', 'UPDATE OR REPLACE movement SET number = 1 WHERE id = ?', 'never changed'],
    [
      'changed on conflict',
      'INSERT INTO movement SELECT * FROM movement WHERE id = ? ON CONFLICT (id) DO UPDATE SET quantity = 1',
      'never changed',
    ],
  ])('cannot be %s', async (_, sql, message) => {
    const handle = await attacked();
    const before = dump(handle);
    expect(() => handle.prepare(sql).run('second')).toThrow(message);
    expect(dump(handle)).toBe(before);
  });

  test('cannot be pushed out by a new row with its number or its id', async () => {
    const handle = await attacked();
    const before = dump(handle);
    expect(() => insert(handle, { number: 2 }, 'INSERT OR REPLACE')).toThrow('never removed');
    expect(() => insert(handle, { id: 'second' }, 'INSERT OR REPLACE')).toThrow('never removed');
    expect(() => insert(handle, { number: 2 })).toThrow('UNIQUE');
    expect(dump(handle)).toBe(before);
  });

  test('keeps its component, its owner and its locations', async () => {
    const handle = await attacked();
    for (const [table, code] of [
      ['component', 'P1'],
      ['owner', 'OURS'],
      ['location', 'NORTH'],
    ] as const)
      expect(() => handle.prepare(`DELETE FROM ${table} WHERE code = ?`).run(code)).toThrow('FOREIGN KEY');
    expect(() => handle.exec("UPDATE location SET kind = 'supplier' WHERE code = 'NORTH'")).toThrow(
      'keeps its kind',
    );
    expect(() => handle.exec("UPDATE location SET name = 'North yard' WHERE code = 'NORTH'")).not.toThrow();
  });
});

describe('What must never be', () => {
  test('a good row gets in, so that the refusals below are for their one wrong value', async () => {
    const handle = await attacked();
    expect(() => insert(handle, {})).not.toThrow();
    expect(() => insert(handle, { number: 4, id: 'fourth', quantity: 9_007_199_254_740_991 })).not.toThrow();
  });

  test.each([
    ['a quantity of 0', { quantity: 0 }],
    ['a quantity below 0', { quantity: -1 }],
    ['a quantity of 2^53, which would be rounded when read', { quantity: 9_007_199_254_740_992 }],
    ['half a piece', { quantity: 1.5 }],
    ['no quantity', { quantity: null }],
    ['a quantity in words', { quantity: 'ten' }],
    ['an unknown component', { component: 'P9' }],
    ['an unknown owner', { owner: 'NOBODY' }],
    ['an unknown location', { to_location: 'NOWHERE' }],
    ['an unknown condition', { condition: 'fine' }],
    ['an unknown reason', { reason: 'because' }],
    ['a movement to where it is', { to_location: 'NORTH' }],
    ['an empty id', { id: ' ' }],
    ['no owner', { owner: null }],
    ['a day that does not exist', { at: '2026-02-30T07:00:00-05:00' }],
    ['a moment without offset', { at: '2026-03-02T07:00:00' }],
    ['a moment in words', { at: 'now' }],
    ['a moment other than the one it is sorted by', { at_ms: 1_772_452_860_000 }],
    ['an opening without its basis', { reason: 'opening' }],
    ['a basis without an opening', { basis: 'counted', basis_date: '2026-02-27' }],
    ['a reversal of nothing', { reason: 'reversal' }],
    ['a reversal of what is not there', { reason: 'reversal', reverses: 'none' }],
    ['a reversal that is not the opposite', { reason: 'reversal', reverses: 'second' }],
    ['a movement of no command', { command: 'none' }],
  ])('%s is refused', async (_, wrong) => {
    const handle = await attacked();
    expect(() => insert(handle, wrong)).toThrow(/constraint failed|cannot store|opposite/u);
    expect(handle.prepare('SELECT count(*) AS n FROM movement').pluck().get()).toBe(2);
  });

  test('a movement taken back twice, and a reversal taken back, are refused', async () => {
    const handle = await attacked();
    const back = { reason: 'reversal', from_location: 'SITE', to_location: 'NORTH', quantity: 10 };
    insert(handle, { ...back, reverses: 'second' });
    expect(() => insert(handle, { ...back, number: 4, id: 'fourth', reverses: 'second' })).toThrow('UNIQUE');
    const again = { reason: 'reversal', quantity: 10, number: 4, id: 'fourth', reverses: 'third' };
    expect(() => insert(handle, again)).toThrow('not a reversal itself');
  });
});

describe('What else is only added to', () => {
  test.each([
    'UPDATE command SET answer = 1',
    'DELETE FROM command',
    'UPDATE rule_version SET rules = 1',
    'DELETE FROM rule_version',
  ])('%s is refused', async (sql) => {
    const handle = await attacked();
    expect(() => handle.exec(sql)).toThrow('never');
  });
});
