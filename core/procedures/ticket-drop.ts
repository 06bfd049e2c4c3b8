// Drops a strip ticket that is open. Its number is not given to another, and what was counted on it stays in the book.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { notOpen } from '../yard/check-ticket-booking.ts';
import { ticketName } from '../yard/strip-ticket.ts';
import { command } from './procedure.ts';
import { commandId } from './shapes.ts';
import { findTicket } from './ticket-facts.ts';
import { ticketId } from './ticket-shapes.ts';

export const ticketDrop = command({
  name: 'ticket.drop',
  input: z.strictObject({ commandId, ticket: ticketId }),
  output: z.strictObject({ ticket: z.string(), name: z.string() }),
  run: async (book, { ticket: asked }) => {
    const found = await findTicket(book, asked);
    if (!found.ok) return found;
    const ticket = found.value;
    const refusal = notOpen(ticket);
    if (refusal !== null) return { ok: false, error: refusal };
    await book.putTicket({ ...ticket, state: 'dropped' });
    return answer({ ticket: ticket.id, name: ticketName(ticket) });
  },
});
