// Whether the levels kept by day are what the movements make. Plain SQL that shares nothing with what keeps the
// levels: it adds all movements up from the first one on, for every key and every day on which something moved.
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import type { BookProblem } from './book.ts';
import type { BookTables } from './tables.ts';

interface Difference {
  readonly component: string;
  readonly owner: string;
  readonly place: string;
  readonly state: string;
  readonly day: number;
  /** Null where there is no movement, or no level, of that day. */
  readonly made: number | null;
  readonly kept: number | null;
}

export async function checkLevels(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const { rows } = await sql<Difference>`
    with entry as (
      select component, owner, to_location as place, condition_after as state, at_ms, quantity as pieces
      from movement
      union all
      select component, owner, from_location, condition, at_ms, -quantity from movement
    ), moved as (
      -- A division of whole numbers cuts towards zero, a day before 1970 begins below it.
      select component, owner, place, state, sum(pieces) as pieces,
        (at_ms / 86400000) - (at_ms < 0 and at_ms % 86400000 <> 0) as day
      from entry group by component, owner, place, state, 6
    ), made as (
      select component, owner, place, state, day,
        sum(pieces) over (partition by component, owner, place, state order by day) as pieces
      from moved
    ), kept as (
      select k.component, k.owner, k.location as place, k.condition as state, l.day, l.quantity as pieces
      from stock_level l join stock_key k on k.number = l.stock_key
    ), difference as (
      select *, 1 as is_made from (select * from made except select * from kept)
      union all
      select *, 0 from (select * from kept except select * from made)
    )
    select component, owner, place, state, day,
      max(case when is_made then pieces end) as made, max(case when is_made then null else pieces end) as kept
    from difference group by component, owner, place, state, day
    order by component, owner, place, state, day limit 20
  `.execute(db);
  return rows.map((row) => ({ check: 'ledger', message: messageOf(row) }));
}

function messageOf({ component, owner, place, state, day, made, kept }: Difference): string {
  const date = new Date(day * 86_400_000).toISOString().slice(0, 10);
  const what = `${component} (${owner}, ${state}) at ${place} at the end of ${date}`;
  if (kept === null) return `The level of ${what} is missing; its movements make ${made}.`;
  if (made === null) return `The level of ${what} is ${kept}, and nothing of it moved on that day.`;
  return `The level of ${what} is ${kept}, and its movements make ${made}.`;
}

/** Every component, owner, place and condition that a movement names has its key, and no others are there. */
export async function checkStockKeys(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const { rows } = await sql<
    Pick<Difference, 'component' | 'owner' | 'place' | 'state'> & { is_there: number }
  >`
    with named as (
      select component, owner, to_location as place, condition_after as state from movement
      union select component, owner, from_location, condition from movement
    ), there as (select component, owner, location as place, condition as state from stock_key)
    select *, 0 as is_there from (select * from named except select * from there)
    union all
    select *, 1 from (select * from there except select * from named)
    order by 1, 2, 3, 4 limit 20
  `.execute(db);
  return rows.map(({ component, owner, place, state, is_there: isThere }) => ({
    check: 'ledger',
    message:
      isThere === 1
        ? `A level is kept of ${component} (${owner}, ${state}) at ${place}, of which nothing ever moved.`
        : `No level is kept of ${component} (${owner}, ${state}) at ${place}, though it moved.`,
  }));
}
