// One strip ticket: what is expected, what was counted so far and by whom, what is still missing.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { ticketStates } from '../yard/strip-ticket.ts';
import { cautionsOf } from './book-ticket.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { readShownTicket } from './shown-ticket.ts';
import { partName, shownEntry, shownPart, ticketHead, ticketId } from './ticket-shapes.ts';

export const ticketRead = query({
  name: 'ticket.read',
  input: z.strictObject({ ticket: ticketId }),
  output: z.strictObject({
    ticket: ticketHead,
    parts: z.array(shownPart),
    /** In the order in which they came in. */
    entries: z.array(shownEntry),
    /** When and by whom it was booked; null until then. */
    booked: z.strictObject({ at: instant, who: z.string() }).nullable(),
    /** Tickets of late finds that follow it. */
    late: z.array(z.strictObject({ id: z.string(), name: z.string(), state: z.enum(ticketStates) })),
    /** Of a booked ticket: what is missing less what was found late. */
    stillMissing: z.array(z.strictObject({ part: partName, component: code, quantity: z.int() })),
    cautions: z.array(z.string()),
    /** Rises with every command that changes the book. */
    changeNumber: z.int(),
  }),
  run: async (book, { ticket }) => {
    const read = await readShownTicket(book, ticket);
    if (!read.ok) return read;
    const { facts, shown } = read.value;
    const { result } = facts.ticket;
    return answer({
      ...shown,
      booked: result === null ? null : { at: result.at, who: result.who },
      cautions: cautionsOf(facts.ticket),
      changeNumber: await book.changeNumber(),
    });
  },
});
