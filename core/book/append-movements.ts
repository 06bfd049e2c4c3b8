// Books movements: gathers what the book knows of the pieces concerned, lets the pure check decide, appends, and
// brings the levels by day up to date. A refusal undoes the whole command.
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import { checkMovements } from '../yard/check-movements.ts';
import type { LedgerView } from '../yard/check-movements.ts';
import { momentMs } from '../yard/moment.ts';
import type { LocationKind, Movement, OwnerKind } from '../yard/movement.ts';
import { stockKey } from '../yard/quantities.ts';
import { msOf, readMovementsById } from './ledger.ts';
import { Refused } from './refused.ts';
import { chunks } from './rows.ts';
import { dayOf, endsOf, keepLevels, msPerDay, readLevelsBefore } from './stock-levels.ts';
import type { StockPlace } from './stock-levels.ts';
import type { BookTables, MovementRow } from './tables.ts';

/** @param recordedAt the command's time, ISO 8601 with offset */
export async function appendMovements(
  db: Kysely<BookTables>,
  command: string,
  movements: readonly Movement[],
  recordedAt: string,
): Promise<void> {
  if (movements.length === 0) return;
  const refusal = checkMovements(movements, await readLedgerView(db, movements));
  if (refusal !== null) throw new Refused(refusal);
  const last = await db
    .selectFrom('movement')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .executeTakeFirst();
  const first = (last?.number ?? 0) + 1;
  const rows = movements.map((movement, index) => rowOf(movement, first + index, recordedAt, command));
  for (const chunk of chunks(rows)) await db.insertInto('movement').values(chunk).execute();
  await keepLevels(db, movements);
}

/** What the book knows that matters to these movements. */
export async function readLedgerView(
  db: Kysely<BookTables>,
  movements: readonly Movement[],
): Promise<LedgerView> {
  const components = await db.selectFrom('component').select('code').execute();
  const owners = await db.selectFrom('owner').select(['code', 'kind']).execute();
  const locations = await db.selectFrom('location').select(['code', 'kind']).execute();
  const ids = movements.flatMap(({ id, reverses }) => (reverses === null ? [id] : [id, reverses]));
  const named = await readMovementsById(db, ids);
  const moments = movements.map((movement) => momentMs(movement.at)).filter((ms) => ms !== null);
  const earliestMs = moments.reduce((least, ms) => Math.min(least, ms), Number.MAX_SAFE_INTEGER);
  const day = dayOf(earliestMs);
  return {
    components: new Set(components.map((row) => row.code)),
    owners: new Map(owners.map((row) => [row.code, row.kind as OwnerKind])),
    locations: new Map(locations.map((row) => [row.code, row.kind as LocationKind])),
    booked: new Map(named.map((each) => [each.id, { movement: each, reversedBy: each.reversedBy }])),
    before: await readLevelsBefore(db, day, placesOf(movements)),
    since: await readChangesFrom(db, day * msPerDay, movements),
  };
}

function placesOf(movements: readonly Movement[]): readonly StockPlace[] {
  const places = new Map<string, StockPlace>();
  for (const movement of movements)
    for (const place of Object.values(endsOf(movement)))
      places.set(stockKey(place.component, place.owner, place.location, place.condition), place);
  return [...places.values()];
}

/** Of the components and owners that move; pieces of theirs at other places are among them and do not matter. */
async function readChangesFrom(
  db: Kysely<BookTables>,
  fromMs: number,
  movements: readonly Movement[],
): Promise<LedgerView['since']> {
  const pairs = new Map(
    movements.map(({ component, owner }) => [JSON.stringify([component, owner]), [component, owner]]),
  );
  const changes: LedgerView['since'][number][] = [];
  for (const chunk of chunks([...pairs.values()])) {
    const { rows } = await sql<LedgerView['since'][number]>`
      with pair (component, owner) as (
        values ${sql.join(chunk.map(([component, owner]) => sql`(${component}, ${owner})`))}
      )
      select m.id, m.component, m.owner, m.quantity, m.from_location as "from", m.to_location as "to",
        m.condition, m.condition_after as "conditionAfter", m.at
      from pair cross join movement m
      where m.component = pair.component and +m.owner = pair.owner and m.at_ms >= ${fromMs}
    `.execute(db);
    changes.push(...rows);
  }
  return changes;
}

function rowOf(movement: Movement, number: number, recordedAt: string, command: string): MovementRow {
  return {
    number,
    id: movement.id,
    component: movement.component,
    quantity: movement.quantity,
    owner: movement.owner,
    from_location: movement.from,
    to_location: movement.to,
    condition: movement.condition,
    condition_after: movement.conditionAfter,
    reason: movement.reason,
    at: movement.at,
    at_ms: msOf(movement.at),
    who: movement.who,
    note_number: movement.noteNumber,
    remark: movement.remark,
    basis: movement.basis,
    basis_date: movement.basisDate,
    reverses: movement.reverses,
    paper: movement.paper,
    recorded_at: recordedAt,
    command,
  };
}
