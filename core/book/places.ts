// Locations and owners in the book.
import type { Kysely } from 'kysely';
import type { Location, LocationKind, Owner, OwnerKind } from '../yard/movement.ts';
import type { BookTables } from './tables.ts';

export async function readLocations(db: Kysely<BookTables>): Promise<readonly Location[]> {
  const rows = await db.selectFrom('location').selectAll().orderBy('code').execute();
  return rows.map(({ code, name, kind }) => ({ code, name, kind: kind as LocationKind }));
}

export async function putLocation(db: Kysely<BookTables>, location: Location): Promise<void> {
  const row = { code: location.code, name: location.name, kind: location.kind };
  await db
    .insertInto('location')
    .values(row)
    .onConflict((conflict) => conflict.column('code').doUpdateSet(row))
    .execute();
}

export async function readOwners(db: Kysely<BookTables>): Promise<readonly Owner[]> {
  const rows = await db.selectFrom('owner').selectAll().orderBy('code').execute();
  return rows.map(({ code, name, kind, agreement }) => ({ code, name, kind: kind as OwnerKind, agreement }));
}

export async function putOwner(db: Kysely<BookTables>, owner: Owner): Promise<void> {
  const row = { code: owner.code, name: owner.name, kind: owner.kind, agreement: owner.agreement };
  await db
    .insertInto('owner')
    .values(row)
    .onConflict((conflict) => conflict.column('code').doUpdateSet(row))
    .execute();
}
