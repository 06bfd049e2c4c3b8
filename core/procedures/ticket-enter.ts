// What one person counted on a strip ticket, from this screen or a phone. Entries add up; one that comes again, be it a
// day later, changes nothing.
import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import type { BookReader, BookWriter } from '../book/book.ts';
import { notOpen } from '../yard/check-ticket-booking.ts';
import { checkTicketEntry } from '../yard/check-ticket-entry.ts';
import { type StripTicket, ticketEntry, type TicketEntry, ticketName } from '../yard/strip-ticket.ts';
import { command } from './procedure.ts';
import { commandId, instant } from './shapes.ts';
import { findTicket } from './ticket-facts.ts';
import { ticketId } from './ticket-shapes.ts';
import { lookAlikeWords } from './ticket-words.ts';

export const ticketEnter = command({
  name: 'ticket.enter',
  input: z.strictObject({
    commandId,
    ticket: ticketId,
    /** Made by whoever enters it, a phone or a screen: the same id again changes nothing. */
    id: z.string().min(8).max(64),
    lines: ticketEntry.shape.lines,
    /** When it was counted; absent: now. */
    at: instant.optional(),
    device: ticketEntry.shape.device.default('here'),
  }),
  output: z.strictObject({ ticket: z.string(), name: z.string(), entry: z.string(), repeated: z.boolean() }),
  run: async (book, { ticket: asked, id, lines, at, device }, context) => {
    const found = await findTicket(book, asked);
    if (!found.ok) return found;
    const entry = { id, lines, at: at ?? context.at, who: context.who, device };
    const added = await addEntry(book, found.value, entry);
    if (!added.ok) return added;
    return answer({
      ticket: found.value.id,
      name: ticketName(found.value),
      entry: id,
      repeated: added.value === 'repeated',
    });
  },
});

/** Codes: entry-of-other-ticket, ticket-booked, ticket-dropped, those of checkTicketEntry. */
export async function addEntry(
  book: BookWriter,
  ticket: StripTicket,
  entry: Omit<TicketEntry, 'number'>,
): Promise<Answer<'added' | 'repeated'>> {
  const entries = await book.ticketEntries(ticket.id);
  // Before all else: a phone that was not told that its batch came in sends it again, perhaps after the booking.
  if (entries.some(({ id }) => id === entry.id)) return answer('repeated');
  const other = await book.ticketOfEntry(entry.id);
  if (other !== null) return ofOtherTicket(book, entry.id, other, ticket);
  const refusal = notOpen(ticket);
  if (refusal !== null) return { ok: false, error: refusal };
  const [components, owners, job] = await Promise.all([
    book.components(),
    book.owners(),
    book.job(ticket.job),
  ]);
  const { partners } = await lookAlikeWords(book, components, job?.units ?? 'us');
  const checked = checkTicketEntry(ticket, entries, entry.lines, {
    components: new Set(components.map(({ code }) => code)),
    owners: new Set(owners.map(({ code }) => code)),
    lookAlikes: partners,
  });
  if (!checked.ok) return checked;
  await book.addTicketEntry(ticket.id, entry);
  return answer('added');
}

async function ofOtherTicket(
  book: BookReader,
  id: string,
  other: string,
  ticket: StripTicket,
): Promise<Answer<never>> {
  const [there] = await book.tickets({ id: other });
  const name = there === undefined ? other : `${ticketName(there)} of job ${there.job}`;
  return {
    ok: false,
    error: {
      code: 'entry-of-other-ticket',
      message: `Entry ${id} was made on ${name}; it cannot be entered on ${ticketName(ticket)} of job ${ticket.job} as well.`,
      field: 'id',
    },
  };
}
