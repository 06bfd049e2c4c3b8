// Cranes with their charts, and how each gang is picked.
import type { Kysely } from 'kysely';
import { crane, type Crane, pickSetup, type PickSetup } from '../pick/setup.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables } from './tables.ts';

export async function readCranes(db: Kysely<BookTables>): Promise<readonly Crane[]> {
  const rows = await db.selectFrom('crane').selectAll().orderBy('code').execute();
  return rows.map((row) => storedJson(crane, row.crane, `crane ${row.code}`));
}

export async function putCrane(db: Kysely<BookTables>, entered: Crane): Promise<void> {
  const row = { code: entered.code, crane: toStoredJson(crane, entered, `crane ${entered.code}`) };
  await db
    .insertInto('crane')
    .values(row)
    .onConflict((conflict) => conflict.column('code').doUpdateSet(row))
    .execute();
}

export async function readPickSetup(db: Kysely<BookTables>, design: string): Promise<PickSetup | null> {
  const row = await db
    .selectFrom('pick_setup')
    .select('setup')
    .where('design', '=', design)
    .executeTakeFirst();
  return row === undefined ? null : storedJson(pickSetup, row.setup, `the pick of ${design}`);
}

export async function putPickSetup(db: Kysely<BookTables>, design: string, setup: PickSetup): Promise<void> {
  const row = { design, setup: toStoredJson(pickSetup, setup, `the pick of ${design}`) };
  await db
    .insertInto('pick_setup')
    .values(row)
    .onConflict((conflict) => conflict.column('design').doUpdateSet(row))
    .execute();
}
