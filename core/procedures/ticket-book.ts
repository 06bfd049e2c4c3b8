// Books a strip ticket: everything it moves, at once. And says beforehand what that would be.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { decideBooking, shownBooking, writeBooking } from './book-ticket.ts';
import { command, query } from './procedure.ts';
import { commandId, instant } from './shapes.ts';
import { readTicket } from './ticket-facts.ts';
import { ticketBooking, ticketId } from './ticket-shapes.ts';

/** What nobody counted came back as expected; absent: it is asked about. */
const uncountedAsExpected = z.boolean().default(false);

export const ticketBook = command({
  name: 'ticket.book',
  input: z.strictObject({ commandId, ticket: ticketId, at: instant, uncountedAsExpected }),
  output: z.strictObject({ ...ticketBooking, who: z.string() }),
  run: async (book, { ticket, at, uncountedAsExpected: isSo }, { at: recordedAt, who }) => {
    const facts = await readTicket(book, ticket);
    if (!facts.ok) return facts;
    const decided = await decideBooking(book, facts.value, { at, who, uncountedAsExpected: isSo });
    if (!decided.ok) return decided;
    await writeBooking(book, facts.value, decided.value.booked, recordedAt);
    return answer({ ...shownBooking(facts.value, decided.value), who });
  },
});

export const ticketTrial = query({
  name: 'ticket.trial',
  input: z.strictObject({ ticket: ticketId, at: instant, uncountedAsExpected }),
  output: z.strictObject(ticketBooking),
  run: async (book, { ticket, at, uncountedAsExpected: isSo }) => {
    const facts = await readTicket(book, ticket);
    if (!facts.ok) return facts;
    const decided = await decideBooking(book, facts.value, { at, who: '', uncountedAsExpected: isSo });
    return decided.ok ? answer(shownBooking(facts.value, decided.value)) : decided;
  },
});
