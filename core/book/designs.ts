// Designs in the book: geometry and hours, never piece lists. Beside the design in force stands every state in
// which it was ever saved.
import type { Kysely } from 'kysely';
import { designGeometry } from '../gang/design.ts';
import type { Design, DesignRevision, Hand } from './book.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables, DesignRow } from './tables.ts';

export async function readDesigns(db: Kysely<BookTables>): Promise<readonly Design[]> {
  const rows = await db.selectFrom('design').selectAll().orderBy('code').execute();
  return rows.map(designOfRow);
}

function designOfRow(row: DesignRow): Design {
  return {
    code: row.code,
    name: row.name,
    system: row.system,
    revision: row.revision,
    hand: row.hand as Hand,
    geometry: storedJson(designGeometry, row.geometry, `design ${row.code}`),
    assembleH: row.assemble_h,
    breakDownH: row.break_down_h,
  };
}

export async function readDesignRevisions(
  db: Kysely<BookTables>,
  design: string,
): Promise<readonly DesignRevision[]> {
  const rows = await db
    .selectFrom('design_revision')
    .leftJoin('command', 'command.id', 'design_revision.command')
    .selectAll('design_revision')
    .select(['command.at', 'command.who'])
    .where('design_revision.design', '=', design)
    .orderBy('design_revision.number')
    .execute();
  return rows.map((row) => ({
    ...designOfRow({ ...row, code: row.design }),
    number: row.number,
    ruleVersion: row.rule_version,
    savedAt: row.at,
    who: row.who,
  }));
}

export async function putDesign(db: Kysely<BookTables>, commandId: string, design: Design): Promise<number> {
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
  return keepRevision(db, commandId, row);
}

/** A state equal to the last one is not kept twice. */
async function keepRevision(db: Kysely<BookTables>, commandId: string, row: DesignRow): Promise<number> {
  const { code, ...state } = row;
  const last = await db
    .selectFrom('design_revision')
    .selectAll()
    .where('design', '=', code)
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst();
  const same = Object.entries(state).every(([key, value]) => last?.[key as keyof typeof state] === value);
  if (last !== undefined && same) return last.number;
  const rules = await db
    .selectFrom('rule_version')
    .select((select) => select.fn.max<number | null>('version').as('version'))
    .where('system', '=', row.system)
    .executeTakeFirst();
  const number = (last?.number ?? 0) + 1;
  await db
    .insertInto('design_revision')
    .values({ ...state, design: code, number, rule_version: rules?.version ?? 0, command: commandId })
    .execute();
  return number;
}

export async function removeDesign(db: Kysely<BookTables>, code: string): Promise<void> {
  await db.deleteFrom('design').where('code', '=', code).execute();
}
