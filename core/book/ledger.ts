// Reads the ledger: single movements, all from a moment on, and pages of it.
import { sql } from 'kysely';
import type { Kysely, RawBuilder } from 'kysely';
import { never } from '../answer.ts';
import { momentMs } from '../yard/moment.ts';
import type { Basis, Condition, Movement, Reason } from '../yard/movement.ts';
import type { BookedMovement, MovementFilter } from './book.ts';
import { chunks } from './rows.ts';
import type { BookTables, MovementRow } from './tables.ts';

/** Milliseconds since 1970 of a moment given by the core itself: a text that is none is a bug. */
export function msOf(at: string): number {
  const ms = momentMs(at);
  if (ms === null) throw new Error(`"${at}" is not a moment with its offset.`);
  return ms;
}

/** Every movement from `fromMs` on, oldest first; those of one moment in the order in which they were booked. */
export async function readMovementsFrom(
  db: Kysely<BookTables>,
  fromMs: number,
): Promise<readonly BookedMovement[]> {
  const rows = await bookedMovements(db)
    .where('movement.at_ms', '>=', fromMs)
    .orderBy('movement.at_ms')
    .orderBy('movement.number')
    .execute();
  return rows.map(bookedOfRow);
}

/** What came into a condition within a stretch of time, the newest first. */
export async function readArrivals(
  db: Kysely<BookTables>,
  condition: Condition,
  { afterMs, upToMs }: { readonly afterMs: number; readonly upToMs: number },
): Promise<readonly BookedMovement[]> {
  const rows = await bookedMovements(db)
    .where('movement.at_ms', '>', afterMs)
    .where('movement.at_ms', '<=', upToMs)
    .where(sql`+movement.condition_after`, '=', condition)
    .orderBy('movement.at_ms', 'desc')
    .orderBy('movement.number', 'desc')
    .execute();
  return rows.map(bookedOfRow);
}

/** In the order in which they were booked, the newest first. */
export async function readMovements(
  db: Kysely<BookTables>,
  filter: MovementFilter,
): Promise<readonly BookedMovement[]> {
  const { beforeNumber = Number.MAX_SAFE_INTEGER, limit } = filter;
  // Each way into the ledger gives its newest by itself, so that each goes by its own index.
  const ways = waysInto(filter).map(
    (way) => sql`select number from (
      select number from movement where ${way} and number < ${beforeNumber} order by number desc limit ${limit}
    )`,
  );
  const { rows: found } = await sql<{ number: number }>`
    ${sql.join(ways, sql` union `)} order by number desc limit ${limit}
  `.execute(db);
  const movements: BookedMovement[] = [];
  for (const chunk of chunks(found)) {
    const numbers = chunk.map(({ number }) => number);
    const rows = await bookedMovements(db)
      .where('movement.number', 'in', numbers)
      .orderBy('movement.number', 'desc')
      .execute();
    movements.push(...rows.map(bookedOfRow));
  }
  return movements;
}

/**
 * Conditions one of which a movement has to meet. The filter that leaves the fewest goes by its index; a plus before
 * the others keeps theirs out of it.
 */
function waysInto(filter: MovementFilter): readonly RawBuilder<unknown>[] {
  const { paper, component, location, condition, reason, owner } = filter;
  const lead = leadOf(filter);
  const others: RawBuilder<unknown>[] = [sql`true`];
  if (component !== undefined && lead !== 'component') others.push(sql`+component = ${component}`);
  if (location !== undefined && lead !== 'location')
    others.push(sql`(+from_location = ${location} or +to_location = ${location})`);
  // Ready pieces are met with at once wherever one begins to look.
  if (condition !== undefined && (lead !== 'condition' || condition === 'ready'))
    others.push(sql`(+condition = ${condition} or +condition_after = ${condition})`);
  if (reason !== undefined && lead !== 'reason') others.push(sql`+reason = ${reason}`);
  if (owner !== undefined && lead !== 'owner') others.push(sql`+owner = ${owner}`);
  const rest = sql.join(others, sql` and `);
  switch (lead) {
    case undefined:
      return [rest];
    case 'paper':
      return [sql`paper = ${paper} and ${rest}`];
    case 'component':
      return [sql`component = ${component} and ${rest}`];
    case 'location':
      return [sql`from_location = ${location} and ${rest}`, sql`to_location = ${location} and ${rest}`];
    case 'condition':
      if (condition === 'ready') return [rest];
      return [
        sql`condition = ${condition} and condition <> 'ready' and ${rest}`,
        sql`condition_after = ${condition} and condition_after <> 'ready' and ${rest}`,
      ];
    case 'reason':
      return [sql`reason = ${reason} and ${rest}`];
    case 'owner':
      return [sql`owner = ${owner} and ${rest}`];
    default:
      return never(lead);
  }
}

type Lead = 'paper' | 'component' | 'location' | 'condition' | 'reason' | 'owner';

/** What a busy yard books all day long, and the conditions its pieces are in. */
const everyday: readonly string[] = ['issue', 'strip', 'clean', 'transfer', 'ready', 'to-clean'];

/** The filter that leaves the fewest entries, as far as can be said without counting them. */
function leadOf(filter: MovementFilter): Lead | undefined {
  const isThere = (each: Lead): boolean => filter[each] !== undefined;
  const isRare = (each: Lead): boolean => isThere(each) && !everyday.includes(filter[each] ?? '');
  return (
    (['paper', 'component'] as const).find(isThere) ??
    (['reason', 'condition'] as const).find(isRare) ??
    (['location', 'condition', 'reason', 'owner'] as const).find(isThere)
  );
}

export async function readMovement(db: Kysely<BookTables>, id: string): Promise<BookedMovement | null> {
  const row = await bookedMovements(db).where('movement.id', '=', id).executeTakeFirst();
  return row === undefined ? null : bookedOfRow(row);
}

export async function readMovementsById(
  db: Kysely<BookTables>,
  ids: readonly string[],
): Promise<readonly BookedMovement[]> {
  const movements: BookedMovement[] = [];
  for (const chunk of chunks(ids)) {
    const rows = await bookedMovements(db).where('movement.id', 'in', chunk).execute();
    movements.push(...rows.map(bookedOfRow));
  }
  return movements;
}

function bookedMovements(db: Kysely<BookTables>) {
  return db
    .selectFrom('movement')
    .leftJoin('movement as back', 'back.reverses', 'movement.id')
    .selectAll('movement')
    .select('back.id as reversed_by');
}

export function bookedOfRow(row: MovementRow & { readonly reversed_by: string | null }): BookedMovement {
  return {
    ...movementOfRow(row),
    number: row.number,
    recordedAt: row.recorded_at,
    reversedBy: row.reversed_by,
  };
}

function movementOfRow(row: MovementRow): Movement {
  return {
    id: row.id,
    component: row.component,
    quantity: row.quantity,
    owner: row.owner,
    from: row.from_location,
    to: row.to_location,
    condition: row.condition as Condition,
    conditionAfter: row.condition_after as Condition,
    reason: row.reason as Reason,
    at: row.at,
    who: row.who,
    noteNumber: row.note_number,
    remark: row.remark,
    basis: row.basis as Basis | null,
    basisDate: row.basis_date,
    reverses: row.reverses,
    paper: row.paper,
  };
}
