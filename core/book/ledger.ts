// Reads the ledger: single movements, and quantities as sums of them.
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import { momentMs } from '../yard/moment.ts';
import type { Basis, Condition, Movement, Reason } from '../yard/movement.ts';
import { stockKey, weakerBasis } from '../yard/quantities.ts';
import type { LineBasis, StockLine } from '../yard/quantities.ts';
import type { BookedMovement, MovementFilter } from './book.ts';
import type { BookTables, MovementRow } from './tables.ts';

/** After every moment that a movement can have. */
const atLastMs = Number.MAX_SAFE_INTEGER;

export interface ComponentOfOwner {
  readonly component: string;
  readonly owner: string;
}

/** Milliseconds since 1970 of a moment given by the core itself: a text that is none is a bug. */
export function msOf(at: string): number {
  const ms = momentMs(at);
  if (ms === null) throw new Error(`"${at}" is not a moment with its offset.`);
  return ms;
}

/**
 * Sums by component, owner, location and condition, without lines of zero, in the order of those codes.
 * @param upToMs the last millisecond that counts
 * @param only the component and owner to look at; all where absent
 */
export async function readStock(
  db: Kysely<BookTables>,
  upToMs: number = atLastMs,
  only?: ComponentOfOwner,
): Promise<readonly StockLine[]> {
  const where =
    only === undefined
      ? sql`at_ms <= ${upToMs}`
      : sql`component = ${only.component} and owner = ${only.owner} and at_ms <= ${upToMs}`;
  const { rows } = await sql<Omit<StockLine, 'basis' | 'basisDate'>>`
    select component, owner, location, condition, sum(quantity) as quantity from (
      select component, owner, to_location as location, condition_after as condition, quantity
      from movement where ${where}
      union all
      select component, owner, from_location, condition, -quantity
      from movement where ${where}
    ) as line
    group by component, owner, location, condition
    having sum(quantity) <> 0
    order by component, owner, location, condition
  `.execute(db);
  const bases = await readBases(db, upToMs);
  return rows.map((row) => {
    const known = bases.get(stockKey(row.component, row.owner, row.location, row.condition));
    return { ...row, basis: known?.basis ?? null, basisDate: known?.basisDate ?? null };
  });
}

/** What the opening figures say of themselves, without those taken back by then. */
async function readBases(db: Kysely<BookTables>, upToMs: number): Promise<ReadonlyMap<string, LineBasis>> {
  const rows = await db
    .selectFrom('movement')
    .leftJoin('movement as back', (join) =>
      join.onRef('back.reverses', '=', 'movement.id').on('back.at_ms', '<=', upToMs),
    )
    .select(['movement.component', 'movement.owner', 'movement.to_location', 'movement.condition_after'])
    .select(['movement.basis', 'movement.basis_date'])
    .where('movement.basis', 'is not', null)
    .where('movement.at_ms', '<=', upToMs)
    .where('back.id', 'is', null)
    .execute();
  const bases = new Map<string, LineBasis>();
  for (const row of rows) {
    const key = stockKey(row.component, row.owner, row.to_location, row.condition_after as Condition);
    const basis: LineBasis = { basis: row.basis as Basis, basisDate: row.basis_date };
    bases.set(key, weakerBasis(bases.get(key) ?? basis, basis));
  }
  return bases;
}

/** Every movement from `fromMs` on, oldest first; those of one moment in the order in which they were booked. */
export async function readMovementsFrom(
  db: Kysely<BookTables>,
  fromMs: number,
  only?: ComponentOfOwner,
): Promise<readonly BookedMovement[]> {
  let query = bookedMovements(db).where('movement.at_ms', '>=', fromMs);
  if (only !== undefined)
    query = query.where('movement.component', '=', only.component).where('movement.owner', '=', only.owner);
  const rows = await query.orderBy('movement.at_ms').orderBy('movement.number').execute();
  return rows.map(bookedOfRow);
}

/** In the order in which they were booked, the newest first. */
export async function readMovements(
  db: Kysely<BookTables>,
  filter: MovementFilter,
): Promise<readonly BookedMovement[]> {
  const { component, location, owner, paper, beforeNumber, limit } = filter;
  let query = bookedMovements(db);
  if (component !== undefined) query = query.where('movement.component', '=', component);
  if (owner !== undefined) query = query.where('movement.owner', '=', owner);
  if (paper !== undefined) query = query.where('movement.paper', '=', paper);
  if (beforeNumber !== undefined) query = query.where('movement.number', '<', beforeNumber);
  if (location !== undefined)
    query = query.where((where) =>
      where.or([
        where('movement.from_location', '=', location),
        where('movement.to_location', '=', location),
      ]),
    );
  const rows = await query.orderBy('movement.number', 'desc').limit(limit).execute();
  return rows.map(bookedOfRow);
}

export async function readMovement(db: Kysely<BookTables>, id: string): Promise<BookedMovement | null> {
  const row = await bookedMovements(db).where('movement.id', '=', id).executeTakeFirst();
  return row === undefined ? null : bookedOfRow(row);
}

function bookedMovements(db: Kysely<BookTables>) {
  return db
    .selectFrom('movement')
    .leftJoin('movement as back', 'back.reverses', 'movement.id')
    .selectAll('movement')
    .select('back.id as reversed_by');
}

function bookedOfRow(row: MovementRow & { readonly reversed_by: string | null }): BookedMovement {
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
