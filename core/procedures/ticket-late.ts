// A second ticket for what turns up after the first was booked: nothing is due on it, and what is counted comes back
// from the lost and is missing no more.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { ticketName, type TicketPart } from '../yard/strip-ticket.ts';
import { command } from './procedure.ts';
import { commandId, instant } from './shapes.ts';
import { readTicket, stillMissing } from './ticket-facts.ts';
import { ticketId } from './ticket-shapes.ts';

export const ticketLate = command({
  name: 'ticket.late',
  input: z.strictObject({
    commandId,
    ticket: ticketId,
    /** When it turned up; absent: now. */
    at: instant.optional(),
  }),
  output: z.strictObject({ ticket: z.string(), number: z.int(), name: z.string() }),
  run: async (book, { commandId: id, ticket: asked, at }, context) => {
    const read = await readTicket(book, asked);
    if (!read.ok) return read;
    const { follows } = read.value;
    // Late finds of late finds are late finds of the first.
    const first = follows === null ? read : await readTicket(book, follows.id);
    if (!first.ok) return first;
    const { ticket, late } = first.value;
    const name = ticketName(ticket);
    if (ticket.state !== 'booked')
      return refuse('ticket-not-booked', `${name} is ${ticket.state}; late finds come after it is booked.`, {
        field: 'ticket',
        hint: ticket.state === 'open' ? `Maybe count on ${name} itself.` : 'Maybe another ticket is meant.',
      });
    const open = late.find(({ state }) => state === 'open');
    if (open !== undefined)
      return refuse('late-ticket-open', `${ticketName(open)} for late finds of ${name} is open.`, {
        field: 'ticket',
        hint: `Maybe count on ${ticketName(open)}.`,
      });
    const missing = stillMissing(ticket, late);
    if (missing.length === 0)
      return refuse('nothing-missing', `Nothing of ${name} is missing.`, {
        field: 'ticket',
        hint: 'Maybe what turned up is of another ticket, or is booked as found by itself.',
      });
    const lost = (await book.locations()).find(({ kind }) => kind === 'lost')?.code ?? '';
    const parts = ticket.parts.flatMap((part): TicketPart[] => {
      const expected = missing.flatMap(({ part: of, component, quantity }) =>
        of === part.part ? [{ component, quantity: 0, sought: quantity, from: lost }] : [],
      );
      // The gang has gone on: what is found late is laid down at the ticket's place.
      return expected.length === 0 ? [] : [{ ...part, next: null, expected }];
    });
    const number = await book.nextTicketNumber();
    await book.putTicket({
      ...ticket,
      id,
      number,
      state: 'open',
      result: null,
      follows: ticket.id,
      parts,
      plannedAt: at ?? context.at,
      remark: null,
    });
    return answer({ ticket: id, number, name: ticketName({ number }) });
  },
});
