// Strip tickets by number, the newest first: what each is of, how far it is counted, what is missing.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { ticketStates } from '../yard/strip-ticket.ts';
import { countedLines, total } from '../yard/ticket-counts.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { stillMissing, ticketHeadOf } from './ticket-facts.ts';
import { partName, ticketHead } from './ticket-shapes.ts';
import { nextWords, partTitle } from './ticket-words.ts';

export const ticketList = query({
  name: 'ticket.list',
  input: z.strictObject({ job: code.optional(), state: z.enum(ticketStates).optional() }),
  output: z.strictObject({
    tickets: z.array(
      ticketHead.extend({
        parts: z.array(z.strictObject({ part: partName, title: z.string(), nextWords: z.string() })),
        /** Pieces; on a ticket of late finds those that were missing. */
        expected: z.int(),
        counted: z.int(),
        /** Lines that somebody entered a figure for, of all. */
        linesCounted: z.int(),
        lines: z.int(),
        /** Of a booked ticket, less what was found late; null while it is open. */
        missing: z.int().nullable(),
        entries: z.int(),
        booked: z.strictObject({ at: instant, who: z.string() }).nullable(),
      }),
    ),
  }),
  run: async (book, { job, state }) => {
    const all = await book.tickets(job === undefined ? {} : { job });
    const tickets = [];
    for (const ticket of all) {
      if (state !== undefined && ticket.state !== state) continue;
      const entries = await book.ticketEntries(ticket.id);
      const lines = countedLines(ticket, entries);
      const follows = all.find(({ id }) => id === ticket.follows) ?? null;
      const late = all.filter((each) => each.follows === ticket.id);
      const { result } = ticket;
      tickets.push({
        ...ticketHeadOf({ ticket, follows }),
        parts: ticket.parts.map((part) => ({
          part: part.part,
          title: partTitle(part, ticket.pour),
          nextWords: nextWords(part.next, ticket.place),
        })),
        expected: lines.reduce((sum, line) => sum + line.most, 0),
        counted: lines.reduce((sum, line) => sum + total(line.counted), 0),
        linesCounted: lines.filter((line) => line.isCounted).length,
        lines: lines.length,
        missing:
          result === null ? null : stillMissing(ticket, late).reduce((sum, line) => sum + line.quantity, 0),
        entries: entries.length,
        booked: result === null ? null : { at: result.at, who: result.who },
      });
    }
    return answer({ tickets: tickets.reverse() });
  },
});
