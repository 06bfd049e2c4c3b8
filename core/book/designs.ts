// Designs in the book: geometry and hours, never piece lists.
import type { Kysely } from 'kysely';
import { designGeometry } from '../gang/design.ts';
import type { Design, Hand } from './book.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables, DesignRow } from './tables.ts';

export async function readDesigns(db: Kysely<BookTables>): Promise<readonly Design[]> {
  const rows = await db.selectFrom('design').selectAll().orderBy('code').execute();
  return rows.map((row) => ({
    code: row.code,
    name: row.name,
    system: row.system,
    revision: row.revision,
    hand: row.hand as Hand,
    geometry: storedJson(designGeometry, row.geometry, `design ${row.code}`),
    assembleH: row.assemble_h,
    breakDownH: row.break_down_h,
  }));
}

export async function putDesign(db: Kysely<BookTables>, design: Design): Promise<void> {
  const row: DesignRow = {
    code: design.code,
    name: design.name,
    system: design.system,
    revision: design.revision,
    hand: design.hand,
    geometry: toStoredJson(designGeometry, design.geometry, `design ${design.code}`),
    assemble_h: design.assembleH,
    break_down_h: design.breakDownH,
  };
  await db
    .insertInto('design')
    .values(row)
    .onConflict((conflict) => conflict.column('code').doUpdateSet(row))
    .execute();
}
