// Makes a strip ticket from the plan, or of gangs named by hand; and says beforehand what it would expect.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { remark } from '../yard/paper-shapes.ts';
import { ticketName } from '../yard/strip-ticket.ts';
import { newTicket } from './make-ticket.ts';
import { command, query } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { shownParts } from './shown-ticket.ts';
import { shownPart } from './ticket-shapes.ts';

const asked = {
  job: code,
  /** Absent: that of the turns. */
  pour: code.optional(),
  /** Ids of turns, as P01/A1; absent, and no gangs named: all of the pour that are on no ticket. */
  turns: z.array(z.string().min(1).max(80)).max(60).optional(),
  /** Tags of gangs that stand there without a turn of the plan. */
  gangs: z.array(code).max(60).optional(),
  /** The loose pieces of the pour as well. */
  loose: z.boolean(),
  /** When it is stripped; absent: by the plan. */
  at: instant.optional(),
  /** Where what is taken apart is laid; absent: the first yard. */
  place: code.optional(),
  remark: remark.optional(),
};

export const ticketMake = command({
  name: 'ticket.make',
  input: z.strictObject({ commandId, ...asked }),
  output: z.strictObject({ ticket: z.string(), number: z.int(), name: z.string() }),
  run: async (book, { commandId: id, ...of }) => {
    const made = await newTicket(book, of);
    if (!made.ok) return made;
    const number = await book.nextTicketNumber();
    await book.putTicket({ ...made.value, id, number });
    return answer({ ticket: id, number, name: ticketName({ number }) });
  },
});

export const ticketExpect = query({
  name: 'ticket.expect',
  input: z.strictObject(asked),
  output: z.strictObject({
    job: code,
    pour: code,
    place: code,
    plannedAt: instant,
    parts: z.array(shownPart),
  }),
  run: async (book, of) => {
    const made = await newTicket(book, of);
    if (!made.ok) return made;
    const { job, pour, place, plannedAt } = made.value;
    const units = (await book.job(job))?.units ?? 'us';
    return answer({ job, pour, place, plannedAt, parts: await shownParts(book, made.value, [], units) });
  },
});
