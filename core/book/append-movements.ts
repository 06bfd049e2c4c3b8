// Books movements: gathers what the book knows of the pieces concerned, lets the pure check decide, and
// appends. A refusal undoes the whole command.
import type { Kysely } from 'kysely';
import { checkMovements } from '../yard/check-movements.ts';
import type { LedgerView } from '../yard/check-movements.ts';
import { momentMs } from '../yard/moment.ts';
import type { LocationKind, Movement } from '../yard/movement.ts';
import { msOf, readMovement, readMovementsFrom, readStock } from './ledger.ts';
import type { ComponentOfOwner } from './ledger.ts';
import { Refused } from './refused.ts';
import { chunks } from './rows.ts';
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
}

/** What the book knows that matters to these movements. */
export async function readLedgerView(
  db: Kysely<BookTables>,
  movements: readonly Movement[],
): Promise<LedgerView> {
  const components = await db.selectFrom('component').select('code').execute();
  const owners = await db.selectFrom('owner').select('code').execute();
  const locations = await db.selectFrom('location').select(['code', 'kind']).execute();
  const moments = movements.map((movement) => momentMs(movement.at)).filter((ms) => ms !== null);
  const earliestMs = moments.reduce((least, ms) => Math.min(least, ms), Number.MAX_SAFE_INTEGER);
  const before: LedgerView['before'][number][] = [];
  const since: Movement[] = [];
  for (const only of concerned(movements)) {
    before.push(...(await readStock(db, earliestMs - 1, only)));
    since.push(...(await readMovementsFrom(db, earliestMs, only)));
  }
  return {
    components: new Set(components.map((row) => row.code)),
    owners: new Set(owners.map((row) => row.code)),
    locations: new Map(locations.map((row) => [row.code, row.kind as LocationKind])),
    booked: await readNamed(db, movements),
    before,
    since,
  };
}

function concerned(movements: readonly Movement[]): readonly ComponentOfOwner[] {
  const pairs = new Map<string, ComponentOfOwner>();
  for (const { component, owner } of movements)
    pairs.set(JSON.stringify([component, owner]), { component, owner });
  return [...pairs.values()];
}

async function readNamed(
  db: Kysely<BookTables>,
  movements: readonly Movement[],
): Promise<LedgerView['booked']> {
  const booked = new Map<string, { movement: Movement; reversedBy: string | null }>();
  const ids = movements.flatMap(({ id, reverses }) => (reverses === null ? [id] : [id, reverses]));
  for (const chunk of chunks(ids)) {
    const rows = await db.selectFrom('movement').select('id').where('id', 'in', chunk).execute();
    for (const { id } of rows) {
      const movement = await readMovement(db, id);
      if (movement !== null) booked.set(id, { movement, reversedBy: movement.reversedBy });
    }
  }
  return booked;
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
