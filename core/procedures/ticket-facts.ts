// What the book knows of a strip ticket: found by its id or by its name, with its entries and the tickets that follow it.
import { answer, type Answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { type StripTicket, type TicketEntry, ticketName } from '../yard/strip-ticket.ts';

/** By its id or its printed name, S-7. Code: unknown-ticket. */
export async function findTicket(book: BookReader, asked: string): Promise<Answer<StripTicket>> {
  const [byId] = await book.tickets({ id: asked });
  if (byId !== undefined) return answer(byId);
  const number = /^S-(\d{1,9})$/iu.exec(asked)?.[1];
  const named =
    number === undefined ? undefined : (await book.tickets()).find((each) => each.number === Number(number));
  if (named !== undefined) return answer(named);
  return refuse('unknown-ticket', `There is no strip ticket ${asked} in this book.`, {
    field: 'ticket',
    hint: 'Maybe it is of another book; tickets are written as S-7.',
  });
}

export interface TicketWithEntries {
  readonly ticket: StripTicket;
  readonly entries: readonly TicketEntry[];
  /** The ticket whose late finds this one counts. */
  readonly follows: StripTicket | null;
  /** Tickets of late finds of this one, dropped ones too. */
  readonly late: readonly StripTicket[];
}

export async function readTicket(book: BookReader, asked: string): Promise<Answer<TicketWithEntries>> {
  const found = await findTicket(book, asked);
  if (!found.ok) return found;
  const ticket = found.value;
  const [entries, earlier, late] = await Promise.all([
    book.ticketEntries(ticket.id),
    ticket.follows === null ? [] : book.tickets({ id: ticket.follows }),
    book.tickets({ follows: ticket.id }),
  ]);
  return answer({ ticket, entries, follows: earlier[0] ?? null, late });
}

export function ticketHeadOf({ ticket, follows }: Pick<TicketWithEntries, 'ticket' | 'follows'>) {
  const { id, number, job, pour, state, place, plannedAt, cleared, remark } = ticket;
  return {
    id,
    number,
    name: ticketName(ticket),
    job,
    pour,
    state,
    place,
    plannedAt,
    cleared,
    follows: follows === null ? null : { id: follows.id, name: ticketName(follows) },
    remark,
  };
}

/** What is still missing of a booked ticket, by part and component, less what late tickets found. */
export function stillMissing(
  ticket: StripTicket,
  late: readonly StripTicket[],
): readonly { readonly part: string; readonly component: string; readonly quantity: number }[] {
  const found = new Map<string, number>();
  for (const { result } of late)
    for (const line of result?.lines ?? []) {
      const key = keyOf(line.part, line.component);
      found.set(key, (found.get(key) ?? 0) + line.found);
    }
  return (ticket.result?.lines ?? []).flatMap(({ part, component, missing }) => {
    const quantity = missing - (found.get(keyOf(part, component)) ?? 0);
    return quantity > 0 ? [{ part, component, quantity }] : [];
  });
}

function keyOf(part: string, component: string): string {
  return JSON.stringify([part, component]);
}
