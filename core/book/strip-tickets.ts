// Strip tickets and what was counted on them.
import type { Kysely } from 'kysely';
import {
  type StripTicket,
  type TicketEntry,
  ticketEntry,
  ticketResult,
  type TicketState,
  ticketText,
} from '../yard/strip-ticket.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables, StripTicketRow } from './tables.ts';

/** By number. */
export async function readTickets(
  db: Kysely<BookTables>,
  only: {
    readonly id?: string;
    readonly state?: TicketState;
    readonly job?: string;
    readonly follows?: string;
  } = {},
): Promise<readonly StripTicket[]> {
  let query = db.selectFrom('strip_ticket').selectAll();
  if (only.id !== undefined) query = query.where('id', '=', only.id);
  if (only.state !== undefined) query = query.where('state', '=', only.state);
  if (only.job !== undefined) query = query.where('job', '=', only.job);
  if (only.follows !== undefined) query = query.where('follows', '=', only.follows);
  const rows = await query.orderBy('number').execute();
  return rows.map((row) => ({
    ...storedJson(ticketText, row.ticket, `strip ticket ${row.number}`),
    id: row.id,
    number: row.number,
    job: row.job,
    pour: row.pour,
    state: row.state as TicketState,
    result:
      row.result === null
        ? null
        : storedJson(ticketResult, row.result, `the result of strip ticket ${row.number}`),
    follows: row.follows,
  }));
}

/** The number that the next new ticket gets. */
export async function nextTicketNumber(db: Kysely<BookTables>): Promise<number> {
  const last = await db
    .selectFrom('strip_ticket')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .executeTakeFirst();
  return (last?.number ?? 0) + 1;
}

export async function putTicket(db: Kysely<BookTables>, command: string, ticket: StripTicket): Promise<void> {
  const { id, number, job, pour, state, result, follows, ...text } = ticket;
  const row: StripTicketRow = {
    id,
    number,
    job,
    pour,
    state,
    ticket: toStoredJson(ticketText, text, `strip ticket ${number}`),
    result:
      result === null ? null : toStoredJson(ticketResult, result, `the result of strip ticket ${number}`),
    follows,
    command,
  };
  await db
    .insertInto('strip_ticket')
    .values(row)
    .onConflict((conflict) => conflict.column('id').doUpdateSet(row))
    .execute();
}

/** In the order in which they came in. */
export async function readTicketEntries(
  db: Kysely<BookTables>,
  ticket: string,
): Promise<readonly TicketEntry[]> {
  const rows = await db
    .selectFrom('strip_entry')
    .selectAll()
    .where('ticket', '=', ticket)
    .orderBy('number')
    .execute();
  return rows.map((row) => ({
    ...storedJson(ticketEntry, row.entry, `entry ${row.id}`),
    id: row.id,
    number: row.number,
  }));
}

/** The ticket on which an entry was made; null where there is no such entry. */
export async function readTicketOfEntry(db: Kysely<BookTables>, id: string): Promise<string | null> {
  const row = await db.selectFrom('strip_entry').select('ticket').where('id', '=', id).executeTakeFirst();
  return row?.ticket ?? null;
}

/** An id that is there already is the caller's to look for first: here it would break the book's rule. */
export async function addTicketEntry(
  db: Kysely<BookTables>,
  command: string,
  ticket: string,
  entry: Omit<TicketEntry, 'number'>,
): Promise<void> {
  const { id, ...text } = entry;
  const last = await db
    .selectFrom('strip_entry')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .where('ticket', '=', ticket)
    .executeTakeFirst();
  await db
    .insertInto('strip_entry')
    .values({
      ticket,
      number: (last?.number ?? 0) + 1,
      id,
      entry: toStoredJson(ticketEntry, text, `entry ${id}`),
      command,
    })
    .execute();
}
