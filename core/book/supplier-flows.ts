// What came from and went to suppliers, by component and owner, out of the ledger itself: levels alone would not
// tell what came and went again.
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import type { SupplierFlow } from '../yard/owed.ts';
import type { BookTables } from './tables.ts';

/** @param upToMs the last millisecond that counts */
export async function readSupplierFlows(
  db: Kysely<BookTables>,
  upToMs: number,
): Promise<readonly SupplierFlow[]> {
  const { rows } = await sql<SupplierFlow>`
    select component, owner, sum(received) as received, sum(returned) as returned from (
      select m.component, m.owner,
        case when m.reverses is null then m.quantity else 0 end as received,
        case when m.reverses is null then 0 else -m.quantity end as returned
      from location l join movement m on m.from_location = l.code
      where l.kind in ('supplier', 'opening') and m.at_ms <= ${upToMs}
      union all
      select m.component, m.owner,
        case when m.reverses is null then 0 else -m.quantity end,
        case when m.reverses is null then m.quantity else 0 end
      from location l join movement m on m.to_location = l.code
      where l.kind in ('supplier', 'opening') and m.at_ms <= ${upToMs}
    ) as flow
    group by component, owner order by owner, component
  `.execute(db);
  return rows;
}
