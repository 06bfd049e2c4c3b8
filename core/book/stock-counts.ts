// Counts, what was entered on them, and pairs of look-alikes.
import type { Kysely } from 'kysely';
import {
  type CountEntry,
  countEntry,
  countResult,
  type CountState,
  countText,
  type LookAlike,
  type StockCount,
} from '../yard/stock-count.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables, StockCountRow } from './tables.ts';

/** By number. */
export async function readCounts(
  db: Kysely<BookTables>,
  only: { readonly id?: string; readonly state?: CountState } = {},
): Promise<readonly StockCount[]> {
  let query = db.selectFrom('stock_count').selectAll();
  if (only.id !== undefined) query = query.where('id', '=', only.id);
  if (only.state !== undefined) query = query.where('state', '=', only.state);
  const rows = await query.orderBy('number').execute();
  return rows.map((row) => ({
    ...storedJson(countText, row.stock_count, `count ${row.number}`),
    id: row.id,
    number: row.number,
    state: row.state as CountState,
    result:
      row.result === null ? null : storedJson(countResult, row.result, `the result of count ${row.number}`),
  }));
}

/** The number that the next new count gets. */
export async function nextCountNumber(db: Kysely<BookTables>): Promise<number> {
  const last = await db
    .selectFrom('stock_count')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .executeTakeFirst();
  return (last?.number ?? 0) + 1;
}

export async function putCount(db: Kysely<BookTables>, command: string, count: StockCount): Promise<void> {
  const { id, number, state, result, ...text } = count;
  const row: StockCountRow = {
    id,
    number,
    state,
    stock_count: toStoredJson(countText, text, `count ${number}`),
    result: result === null ? null : toStoredJson(countResult, result, `the result of count ${number}`),
    command,
  };
  await db
    .insertInto('stock_count')
    .values(row)
    .onConflict((conflict) => conflict.column('id').doUpdateSet(row))
    .execute();
}

/** In the order in which they came in. */
export async function readCountEntries(
  db: Kysely<BookTables>,
  count: string,
): Promise<readonly CountEntry[]> {
  const rows = await db
    .selectFrom('count_entry')
    .selectAll()
    .where('stock_count', '=', count)
    .orderBy('number')
    .execute();
  return rows.map((row) => ({
    ...storedJson(countEntry, row.entry, `entry ${row.id}`),
    id: row.id,
    number: row.number,
  }));
}

export async function addCountEntry(
  db: Kysely<BookTables>,
  command: string,
  count: string,
  entry: Omit<CountEntry, 'number'>,
): Promise<void> {
  const { id, ...text } = entry;
  const last = await db
    .selectFrom('count_entry')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .where('stock_count', '=', count)
    .executeTakeFirst();
  await db
    .insertInto('count_entry')
    .values({
      stock_count: count,
      number: (last?.number ?? 0) + 1,
      id,
      entry: toStoredJson(countEntry, text, `entry ${id}`),
      command,
    })
    .execute();
}

export async function readLookAlikes(db: Kysely<BookTables>): Promise<readonly LookAlike[]> {
  const rows = await db.selectFrom('look_alike').selectAll().orderBy('component').orderBy('other').execute();
  return rows.map(({ component, other, tell_apart: tellApart }) => ({ component, other, tellApart }));
}

/** The two in either order. */
export async function putLookAlike(db: Kysely<BookTables>, pair: LookAlike): Promise<void> {
  const isInOrder = pair.component < pair.other;
  const row = {
    component: isInOrder ? pair.component : pair.other,
    other: isInOrder ? pair.other : pair.component,
    tell_apart: pair.tellApart,
  };
  await db
    .insertInto('look_alike')
    .values(row)
    .onConflict((conflict) => conflict.columns(['component', 'other']).doUpdateSet(row))
    .execute();
}

export async function removeLookAlike(db: Kysely<BookTables>, one: string, two: string): Promise<void> {
  await db
    .deleteFrom('look_alike')
    .where('component', '=', one < two ? one : two)
    .where('other', '=', one < two ? two : one)
    .execute();
}
