// `check` finds what a book must never have. The faults are put in by SQL with the guards taken off, which
// are put back afterwards: that one is missing is a finding of its own.
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { BookProblem } from '../../core/book/book.ts';
import { aFolder, aYard, done, movement, now, opened, openingFigure, rawHandle } from './a-book.ts';

async function problemsAfter(sql: string): Promise<readonly BookProblem[]> {
  const file = path.join(aFolder(), 'a.regang');
  const book = await aYard(file);
  await done(book, async (writer) => {
    await writer.appendMovements(
      [openingFigure({ id: 'first', quantity: 40 }), movement({ id: 'second' })],
      now,
    );
    const back = {
      at: '2026-03-05T07:00:00-05:00',
      from: 'SITE',
      to: 'NORTH',
      reason: 'reversal',
      reverses: 'second',
    } as const;
    await writer.appendMovements([movement({ id: 'third', ...back }), movement({ quantity: 3 })], now);
  });
  expect(await book.read((reader) => reader.check())).toEqual([]);
  await book.close();
  const handle = await rawHandle(file);
  handle.pragma('foreign_keys = OFF');
  const guards = handle
    .prepare<[], { name: string; sql: string }>("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'")
    .all();
  expect(guards.length).toBeGreaterThan(0);
  for (const { name } of guards) handle.exec(`DROP TRIGGER ${name}`);
  handle.exec(sql);
  for (const { name, sql: guard } of guards) if (!sql.includes(`-- leaves off ${name}`)) handle.exec(guard);
  handle.close();
  return (await opened(file)).read((reader) => reader.check());
}

describe('A check of the book', () => {
  test.each([
    [
      'a location gone',
      "DELETE FROM location WHERE code = 'SITE'",
      'The sum of P1 (OURS) over all locations is -3, not 0.',
    ],
    [
      'a component gone',
      "DELETE FROM component WHERE code = 'P1'",
      'A row of movement names a component that is not there.',
    ],
    [
      'a figure made smaller',
      "UPDATE movement SET quantity = 5 WHERE id = 'first'",
      'NORTH had -8 of P1 (OURS, ready) at some moment.',
    ],
    [
      'a reversal made smaller',
      "UPDATE movement SET quantity = 5 WHERE id = 'third'",
      'Movement third is not the opposite of movement second, which it takes back.',
    ],
    [
      'a movement taken out',
      "DELETE FROM movement WHERE id = 'second'",
      'The last movement has number 4, and there are 3: some were taken out.',
    ],
    [
      'a level made higher',
      "UPDATE stock_level SET quantity = quantity + 1 WHERE stock_key = (SELECT number FROM stock_key WHERE location = 'SITE') AND day = 20514",
      'The level of P1 (OURS, ready) at SITE at the end of 2026-03-02 is 14, and its movements make 13.',
    ],
    [
      'a level taken out',
      "DELETE FROM stock_level WHERE stock_key = (SELECT number FROM stock_key WHERE location = 'NORTH') AND day = 20513",
      'The level of P1 (OURS, ready) at NORTH at the end of 2026-03-01 is missing; its movements make 40.',
    ],
    [
      'a level of a day on which nothing moved',
      "INSERT INTO stock_level SELECT number, 20600, 3 FROM stock_key WHERE location = 'SITE'",
      'The level of P1 (OURS, ready) at SITE at the end of 2026-05-27 is 3, and nothing of it moved on that day.',
    ],
    [
      'a key taken out',
      "DELETE FROM stock_key WHERE location = 'SITE'",
      'No level is kept of P1 (OURS, ready) at SITE, though it moved.',
    ],
    [
      'a key of nothing',
      "INSERT INTO stock_key VALUES (99, 'P2', 'H1', 'SITE', 'quarantine')",
      'A level is kept of P2 (H1, quarantine) at SITE, of which nothing ever moved.',
    ],
    [
      'a guard taken off',
      '-- leaves off movement_is_never_changed',
      'The trigger movement_is_never_changed is missing.',
    ],
    ['an index dropped', 'DROP INDEX movement_to', 'The index movement_to is missing.'],
    [
      'a table of somebody else',
      'CREATE TABLE mine (a TEXT) STRICT',
      'The table mine does not belong to a book.',
    ],
    [
      'a saved state of a design that is none',
      `INSERT INTO design_revision VALUES ('G1', 1, 'G', 'S', 'A', 'left', '{"panels":1}', 1, 1, 0, NULL)`,
      expect.stringContaining('The saved states of G1 cannot be read: '),
    ],
    [
      'a saved state taken out',
      `INSERT INTO design_revision VALUES ('G1', 2, 'G', 'S', 'A', 'left', '{}', 1, 1, 0, NULL)`,
      'Design G1 has the saved state 2 as its last, and 1 are there: some were taken out.',
    ],
    [
      'a design without its saved state',
      `INSERT INTO design VALUES ('G1', 'G', 'S', 'A', 'left', '{}', 1, 1)`,
      'Design G1 is not as it was last saved.',
    ],
    [
      'a crane that is none',
      `INSERT INTO crane VALUES ('K1', '{"code":"K1"}')`,
      expect.stringContaining('The cranes cannot be read: '),
    ],
    [
      'a pick that is none',
      `INSERT INTO design VALUES ('G1', 'G', 'S', 'A', 'left', '{}', 1, 1); INSERT INTO pick_setup VALUES ('G1', '{}')`,
      expect.stringContaining('The pick of G1 cannot be read: '),
    ],
    [
      'tie holes that are none',
      `UPDATE component SET tie_holes_nm = '{"a":1}' WHERE code = 'P1'`,
      expect.stringContaining('The components cannot be read: '),
    ],
  ])('finds %s', async (_, sql, message) => {
    const problems = await problemsAfter(sql);
    expect(problems.map((each) => each.message)).toEqual(expect.arrayContaining([message]));
  });

  test('finds a value that a check of the schema would have refused', async () => {
    const problems = await problemsAfter(
      "PRAGMA ignore_check_constraints = ON; UPDATE movement SET basis_date = 'never' WHERE id = 'first'",
    );
    expect(problems).toEqual([{ check: 'integrity', message: 'CHECK constraint failed in movement' }]);
  });
});
