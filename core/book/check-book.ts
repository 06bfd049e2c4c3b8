// Looks the whole book over. The ledger's part is an auditor in plain SQL that shares no code with the
// sums of the yard: it walks the movements in order of time and adds them up by itself.
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import type { BookProblem } from './book.ts';
import { checkLevels, checkStockKeys } from './check-levels.ts';
import { checkNumbers, checkReadable } from './check-readable.ts';
import { checkRevisions } from './check-revisions.ts';
import { checkSchema } from './check-schema.ts';
import type { Migration } from './migration.ts';
import { isDamage, sqliteCode } from './refused.ts';
import type { BookTables } from './tables.ts';

type Look = (db: Kysely<BookTables>, migrations: readonly Migration[]) => Promise<readonly BookProblem[]>;

const looks: readonly (readonly [BookProblem['check'], Look])[] = [
  ['integrity', checkIntegrity],
  ['integrity', checkSchema],
  ['foreign-keys', checkForeignKeys],
  ['integrity', checkReadable],
  ['integrity', checkRevisions],
  ['ledger', checkNumbers],
  ['ledger', checkBalance],
  ['ledger', checkNeverBelowZero],
  ['ledger', checkReversals],
  ['ledger', checkStockKeys],
  ['ledger', checkLevels],
];

/** What one look cannot get at is a problem as well, and the others go on. */
export async function checkBook(
  db: Kysely<BookTables>,
  migrations: readonly Migration[],
): Promise<readonly BookProblem[]> {
  const problems: BookProblem[] = [];
  for (const [check, look] of looks) {
    try {
      problems.push(...(await look(db, migrations)));
    } catch (error) {
      if (!isDamage(error) && sqliteCode(error) !== 'SQLITE_ERROR') throw error;
      const why = error instanceof Error ? error.message : '';
      problems.push({ check, message: `The book could not be looked over: ${why}.` });
    }
  }
  return problems;
}

async function checkIntegrity(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check(20)`.execute(db);
  if (rows.length === 0) throw new Error('The integrity check looked at nothing.');
  return rows
    .filter((row) => row.integrity_check !== 'ok')
    .map((row) => ({ check: 'integrity', message: row.integrity_check }));
}

async function checkForeignKeys(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const { rows } = await sql<{ table: string; parent: string }>`pragma foreign_key_check`.execute(db);
  return rows.slice(0, 20).map((row) => ({
    check: 'foreign-keys',
    message: `A row of ${row.table} names ${row.parent === 'owner' ? 'an' : 'a'} ${row.parent} that is not there.`,
  }));
}

/** What came in less what went out, over all locations, is zero for every component and owner. */
async function checkBalance(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const { rows } = await sql<{ component: string; owner: string; balance: number }>`
    select component, owner, sum(pieces) as balance from (
      select m.component, m.owner, m.quantity as pieces
      from movement m join location l on l.code = m.to_location
      union all
      select m.component, m.owner, -m.quantity
      from movement m join location l on l.code = m.from_location
    ) as entry
    group by component, owner having sum(pieces) <> 0 order by component, owner limit 20
  `.execute(db);
  return rows.map(({ component, owner, balance }) => ({
    check: 'ledger',
    message: `The sum of ${component} (${owner}) over all locations is ${balance}, not 0.`,
  }));
}

/** At no moment does a location that holds pieces have less than nothing. */
async function checkNeverBelowZero(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const { rows } = await sql<{
    component: string;
    owner: string;
    place: string;
    state: string;
    least: number;
  }>`
    with entry as (
      select component, owner, to_location as place, condition_after as state, at_ms, quantity as pieces
      from movement
      union all
      select component, owner, from_location, condition, at_ms, -quantity from movement
    ), moment as (
      select component, owner, place, state, at_ms, sum(pieces) as pieces
      from entry join location l on l.code = place
      where l.kind in ('yard', 'rack', 'site', 'container', 'gang', 'pour', 'repair', 'other-job')
      group by component, owner, place, state, at_ms
    ), level as (
      select component, owner, place, state,
        sum(pieces) over (partition by component, owner, place, state order by at_ms) as pieces
      from moment
    )
    select component, owner, place, state, min(pieces) as least from level
    group by component, owner, place, state having min(pieces) < 0
    order by component, owner, place, state limit 20
  `.execute(db);
  return rows.map(({ component, owner, place, state, least }) => ({
    check: 'ledger',
    message: `${place} had ${least} of ${component} (${owner}, ${state}) at some moment.`,
  }));
}

/** Every reversal is the opposite of what it takes back. */
async function checkReversals(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const { rows } = await sql<{ id: string; reverses: string }>`
    select back.id, back.reverses from movement back join movement m on m.id = back.reverses
    where m.reverses is not null or m.component <> back.component or m.owner <> back.owner
      or m.quantity <> back.quantity or m.from_location <> back.to_location
      or m.to_location <> back.from_location or m.condition <> back.condition_after
      or m.condition_after <> back.condition
    order by back.number limit 20
  `.execute(db);
  return rows.map(({ id, reverses }) => ({
    check: 'ledger',
    message: `Movement ${id} is not the opposite of movement ${reverses}, which it takes back.`,
  }));
}
