// Quantities: the levels kept at the end of the day before, and what moved since. Beside each stands how the opening
// figure under it was got.
import { sql } from 'kysely';
import type { Kysely, RawBuilder, SqlBool } from 'kysely';
import type { Basis, Condition } from '../yard/movement.ts';
import { stockKey, weakerBasis } from '../yard/quantities.ts';
import type { LineBasis, StockLine } from '../yard/quantities.ts';
import type { StockOf } from './book.ts';
import { dayOf, msPerDay } from './stock-levels.ts';
import type { BookTables } from './tables.ts';

/** After every moment that a movement can have. */
const atLastMs = Number.MAX_SAFE_INTEGER;

/**
 * Quantities by component, owner, location and condition, without lines of zero, in the order of those codes.
 * @param upToMs the last millisecond that counts
 * @param only the components and locations to look at; all where absent
 */
export async function readStock(
  db: Kysely<BookTables>,
  upToMs: number = atLastMs,
  only?: StockOf,
): Promise<readonly StockLine[]> {
  const day = dayOf(upToMs);
  const ofKey = concerned(only, sql`component`, sql`location`);
  const moved = (end: 'from_location' | 'to_location') =>
    sql`at_ms >= ${day * msPerDay} and at_ms <= ${upToMs} and ${concerned(only, sql`component`, sql.ref(end))}`;
  const { rows } = await sql<Omit<StockLine, 'basis' | 'basisDate'>>`
    with today as materialized (
      select component, owner, location, condition, sum(quantity) as quantity from (
        select component, owner, to_location as location, condition_after as condition, quantity
        from movement where ${moved('to_location')}
        union all
        select component, owner, from_location, condition, -quantity from movement where ${moved('from_location')}
      ) as entry
      group by component, owner, location, condition
    )
    select component, owner, location, condition, quantity from (
      select k.component, k.owner, k.location, k.condition, coalesce((
        select l.quantity from stock_level l where l.stock_key = k.number and l.day < ${day}
        order by l.day desc limit 1
      ), 0) + coalesce(today.quantity, 0) as quantity
      from (select * from stock_key where ${ofKey}) k
      left join today using (component, owner, location, condition)
    ) as line
    where quantity <> 0
    order by component, owner, location, condition
  `.execute(db);
  const bases = await readBases(db, upToMs, only);
  return rows.map((row) => {
    const known = bases.get(stockKey(row.component, row.owner, row.location, row.condition));
    return { ...row, basis: known?.basis ?? null, basisDate: known?.basisDate ?? null };
  });
}

/** What the opening figures say of themselves, without those taken back by then. */
async function readBases(
  db: Kysely<BookTables>,
  upToMs: number,
  only?: StockOf,
): Promise<ReadonlyMap<string, LineBasis>> {
  let query = db
    .selectFrom('movement')
    .leftJoin('movement as back', (join) =>
      // Not by time but by what it reverses: the plus keeps the index of moments out of it.
      join.onRef('back.reverses', '=', 'movement.id').on(sql`+back.at_ms`, '<=', upToMs),
    )
    .select(['movement.component', 'movement.owner', 'movement.to_location', 'movement.condition_after'])
    .select(['movement.basis', 'movement.basis_date'])
    .where('movement.basis', 'is not', null)
    .where(sql`+movement.at_ms`, '<=', upToMs)
    .where('back.id', 'is', null);
  if (only !== undefined)
    query = query.where(concerned(only, sql`movement.component`, sql`movement.to_location`));
  const bases = new Map<string, LineBasis>();
  for (const row of await query.execute()) {
    const key = stockKey(row.component, row.owner, row.to_location, row.condition_after as Condition);
    const basis: LineBasis = { basis: row.basis as Basis, basisDate: row.basis_date };
    bases.set(key, weakerBasis(bases.get(key) ?? basis, basis));
  }
  return bases;
}

/** Of one of these components, or at one of these locations; the plus keeps the indexes of both out of it. */
function concerned(
  only: StockOf | undefined,
  component: RawBuilder<unknown>,
  location: RawBuilder<unknown>,
): RawBuilder<SqlBool> {
  if (only === undefined) return sql<SqlBool>`true`;
  return sql<SqlBool>`(+${component} in (${sql.join([...only.components])}) or +${location} in (${sql.join([...only.locations])}))`;
}
