// One strip ticket made, counted and then booked through its procedure, as a door asks for it: reading the ticket and
// the stock, deciding, writing, and telling what was booked.
import type { OpenBook } from '../../core/book/open.ts';
import type { Movement } from '../../core/yard/movement.ts';
import { ticketBook } from '../../core/procedures/ticket-book.ts';

/** So many of each to the yard, ready. */
export async function deliver(
  book: OpenBook,
  components: readonly string[],
  quantity: number,
  at: string,
): Promise<void> {
  const rest = { noteNumber: null, remark: null, basis: null, basisDate: null, reverses: null, paper: null };
  const movements = components.map((component): Movement => ({
    id: `for-tickets-${component}`,
    component,
    quantity,
    owner: 'MHW',
    from: 'MHW',
    to: 'ENN',
    condition: 'ready',
    conditionAfter: 'ready',
    reason: 'delivery',
    at,
    who: 'bench',
    ...rest,
  }));
  const meta = { commandId: 'for-tickets', name: 'note.book', at, who: 'bench' };
  const done = await book.command(meta, async (writer) => {
    await writer.appendMovements(movements, at);
    return { ok: true, value: null };
  });
  if (!done.ok) throw new Error(done.error.message);
}

/** Milliseconds of the booking alone: the ticket is made and counted before. */
export async function wholeTicketMs(
  book: OpenBook,
  ticket: string,
  components: readonly string[],
  at: string,
): Promise<number> {
  const who = 'bench';
  const part = 'loose';
  const expected = components.map((component) => ({ component, quantity: 1, from: 'ENN' }));
  const counted = components.map((component) => ({
    part,
    component,
    condition: 'to-clean' as const,
    quantity: 1,
  }));
  const make = { commandId: `${ticket}-make`, name: 'ticket.make', at, who };
  await book.command(make, async (writer) => {
    await writer.putTicket({
      id: ticket,
      number: await writer.nextTicketNumber(),
      job: 'TB26',
      pour: 'P01',
      state: 'open',
      result: null,
      follows: null,
      parts: [{ part, turn: null, gang: null, design: null, next: null, expected }],
      place: 'ENN',
      plannedAt: at,
      cleared: null,
      remark: null,
    });
    await writer.addTicketEntry(ticket, { id: `${ticket}-entry`, lines: counted, at, who, device: 'bench' });
    return { ok: true, value: null };
  });
  const commandId = `${ticket}-book`;
  const input = ticketBook.input.parse({ commandId, ticket, at });
  const started = performance.now();
  const done = await book.command({ commandId, name: ticketBook.name, at, who }, (writer) =>
    ticketBook.run(writer, input, { at, who }),
  );
  const took = performance.now() - started;
  if (!done.ok) throw new Error(done.error.message);
  return took;
}
