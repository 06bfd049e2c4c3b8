// Levels of stock by day, kept beside the ledger so that a quantity is read and not added up from the first
// movement on: for every component, owner, location and condition the quantity at the end of each day on which it
// moved. They are written in the transaction of the movements; a booking for an earlier day lifts all days after it.
import { sql } from 'kysely';
import type { Kysely, RawBuilder } from 'kysely';
import type { Condition, Movement } from '../yard/movement.ts';
import { stockKey } from '../yard/quantities.ts';
import { msOf } from './ledger.ts';
import { chunks } from './rows.ts';
import type { BookTables } from './tables.ts';

export const msPerDay = 86_400_000;

/** Days of Greenwich since 1970: midnight begins the next one. */
export function dayOf(ms: number): number {
  return Math.floor(ms / msPerDay);
}

/** What a quantity is kept of. */
export interface StockPlace {
  readonly component: string;
  readonly owner: string;
  readonly location: string;
  readonly condition: Condition;
}

/** Where a movement takes from and where it brings to. */
export function endsOf(movement: Movement): { readonly from: StockPlace; readonly to: StockPlace } {
  const { component, owner } = movement;
  return {
    from: { component, owner, location: movement.from, condition: movement.condition },
    to: { component, owner, location: movement.to, condition: movement.conditionAfter },
  };
}

/** A place, and by how much all its days from one on are lifted, up to the day before another. */
interface Lift extends StockPlace {
  readonly fromDay: number;
  readonly untilDay: number;
  readonly by: number;
}

const afterAllDays = dayOf(Number.MAX_SAFE_INTEGER) + 1;

/** Brings the levels up to date with movements that are booked in the same transaction. */
export async function keepLevels(db: Kysely<BookTables>, movements: readonly Movement[]): Promise<void> {
  for (const chunk of chunks(liftsOf(movements))) {
    const lift = sql`lift (component, owner, location, condition, from_day, until_day, pieces) as (
      values ${sql.join(chunk.map(rowOfLift))}
    )`;
    await sql`
      insert into stock_key (component, owner, location, condition)
      select column1, column2, column3, column4 from (values ${sql.join(chunk.map(rowOfLift))})
      where true on conflict do nothing
    `.execute(db);
    // A day that has no level yet begins with the one before it.
    await sql`
      with ${lift}
      insert into stock_level (stock_key, day, quantity)
      select k.number, lift.from_day, coalesce((
        select earlier.quantity from stock_level earlier
        where earlier.stock_key = k.number and earlier.day < lift.from_day order by earlier.day desc limit 1
      ), 0)
      from lift cross join stock_key k using (component, owner, location, condition)
      where true on conflict do nothing
    `.execute(db);
    // From the few lifts to their levels and not the other way round, which would read every level there is.
    await sql`
      with ${lift}
      insert into stock_level (stock_key, day, quantity)
      select l.stock_key, l.day, l.quantity + lift.pieces
      from lift
        cross join stock_key k using (component, owner, location, condition)
        cross join stock_level l
      where l.stock_key = k.number and l.day >= lift.from_day and l.day < lift.until_day
      on conflict (stock_key, day) do update set quantity = excluded.quantity
    `.execute(db);
  }
}

/** So that each level is lifted once: from one changed day of its place to the next, by all that came until then. */
function liftsOf(movements: readonly Movement[]): readonly Lift[] {
  const places = new Map<string, { readonly place: StockPlace; readonly days: Map<number, number> }>();
  const add = (place: StockPlace, day: number, pieces: number): void => {
    const key = stockKey(place.component, place.owner, place.location, place.condition);
    const entry = places.get(key) ?? { place, days: new Map<number, number>() };
    places.set(key, entry);
    entry.days.set(day, (entry.days.get(day) ?? 0) + pieces);
  };
  for (const movement of movements) {
    const day = dayOf(msOf(movement.at));
    const { from, to } = endsOf(movement);
    add(from, day, -movement.quantity);
    add(to, day, movement.quantity);
  }
  const lifts: Lift[] = [];
  for (const { place, days } of places.values()) {
    const inOrder = [...days].sort(([one], [other]) => one - other);
    let by = 0;
    for (const [index, [fromDay, pieces]] of inOrder.entries()) {
      by += pieces;
      lifts.push({ ...place, fromDay, untilDay: inOrder[index + 1]?.[0] ?? afterAllDays, by });
    }
  }
  return lifts;
}

function rowOfLift(lift: Lift): RawBuilder<unknown> {
  const { component, owner, location, condition, fromDay, untilDay, by } = lift;
  return sql`(${component}, ${owner}, ${location}, ${condition}, ${fromDay}, ${untilDay}, ${by})`;
}

/** The quantities of these places at the end of the day before `day`; those without one are left out. */
export async function readLevelsBefore(
  db: Kysely<BookTables>,
  day: number,
  places: readonly StockPlace[],
): Promise<readonly (StockPlace & { readonly quantity: number })[]> {
  const found: (StockPlace & { readonly quantity: number })[] = [];
  for (const chunk of chunks(places)) {
    const rows = chunk.map(
      ({ component, owner, location, condition }) => sql`(${component}, ${owner}, ${location}, ${condition})`,
    );
    const { rows: levels } = await sql<StockPlace & { readonly quantity: number }>`
      with place (component, owner, location, condition) as (values ${sql.join(rows)})
      select component, owner, location, condition, quantity from (
        select place.*, (
          select l.quantity from stock_level l where l.stock_key = k.number and l.day < ${day}
          order by l.day desc limit 1
        ) as quantity
        from place cross join stock_key k using (component, owner, location, condition)
      ) as level where quantity is not null
    `.execute(db);
    found.push(...levels);
  }
  return found;
}
