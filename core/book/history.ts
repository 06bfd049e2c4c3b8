// The history of a number: every movement that touched the pieces it counts, the newest first in order of time, each
// with the quantity after it. The number is one line of stock, or the sum of several.
import { sql } from 'kysely';
import type { Kysely, RawBuilder } from 'kysely';
import { isHeld } from '../yard/movement.ts';
import type { LocationKind } from '../yard/movement.ts';
import type { HistoryFilter, HistoryRow } from './book.ts';
import { bookedOfRow } from './ledger.ts';
import { dayOf, msPerDay } from './stock-levels.ts';
import type { BookTables, MovementRow } from './tables.ts';

type FoundRow = MovementRow & { readonly reversed_by: string | null; readonly change: number };

export async function readHistory(
  db: Kysely<BookTables>,
  filter: HistoryFilter,
): Promise<readonly HistoryRow[]> {
  const { beforeNumber, limit } = filter;
  const places = filter.location === undefined ? await readHeldPlaces(db) : [filter.location];
  const isIn = counted(filter, places);
  const before =
    beforeNumber === undefined
      ? sql`true`
      : sql`(m.at_ms, m.number) < (select at_ms, number from movement where number = ${beforeNumber})`;
  const { rows } = await sql<FoundRow>`
    select m.*, back.id as reversed_by, ${isIn.change} as change
    from movement m left join movement back on back.reverses = m.id
    where ${ofComponent(filter, 'm')} and (${isIn.arrives} or ${isIn.leaves}) and ${before}
    order by m.at_ms desc, m.number desc limit ${limit}
  `.execute(db);
  const [newest] = rows;
  if (newest === undefined) return [];
  let quantity = await quantityAfter(db, filter, places, newest);
  return rows.map((row) => {
    const after = quantity;
    quantity -= row.change;
    return { ...bookedOfRow(row), change: row.change, quantityAfter: after };
  });
}

async function readHeldPlaces(db: Kysely<BookTables>): Promise<readonly string[]> {
  const rows = await db.selectFrom('location').select(['code', 'kind']).execute();
  return rows.filter(({ kind }) => isHeld(kind as LocationKind)).map(({ code }) => code);
}

/** The newest movement of a page tells the level of the day before it; what moved since on its day comes on top. */
async function quantityAfter(
  db: Kysely<BookTables>,
  filter: HistoryFilter,
  places: readonly string[],
  { at_ms: ms, number }: MovementRow,
): Promise<number> {
  const day = dayOf(ms);
  const { condition } = filter;
  const ofCondition = condition === undefined ? sql`true` : sql`k.condition = ${condition}`;
  const isIn = counted(filter, places);
  const { rows } = await sql<{ quantity: number | null }>`
    select sum(quantity) as quantity from (
      select (
        select l.quantity from stock_level l where l.stock_key = k.number and l.day < ${day}
        order by l.day desc limit 1
      ) as quantity
      from stock_key k
      where ${ofComponent(filter, 'k')} and k.location in (${sql.join(places)}) and ${ofCondition}
      union all
      select ${isIn.change} from movement m
      where ${ofComponent(filter, 'm')} and m.at_ms >= ${day * msPerDay} and (m.at_ms, m.number) <= (${ms}, ${number})
    )
  `.execute(db);
  return rows[0]?.quantity ?? 0;
}

function ofComponent({ component, owner }: HistoryFilter, table: 'm' | 'k'): RawBuilder<unknown> {
  const of = sql`${sql.ref(`${table}.component`)} = ${component}`;
  return owner === undefined ? of : sql`${of} and ${sql.ref(`${table}.owner`)} = ${owner}`;
}

/** Whether the pieces of a movement arrive among those counted, leave them, and by how many the number changes. */
function counted({ condition }: HistoryFilter, places: readonly string[]) {
  const at = (location: string, state: string): RawBuilder<unknown> => {
    const isThere = sql`${sql.ref(location)} in (${sql.join(places)})`;
    return condition === undefined ? isThere : sql`(${isThere} and ${sql.ref(state)} = ${condition})`;
  };
  const arrives = at('m.to_location', 'm.condition_after');
  const leaves = at('m.from_location', 'm.condition');
  return { arrives, leaves, change: sql`m.quantity * (${arrives}) - m.quantity * (${leaves})` };
}
