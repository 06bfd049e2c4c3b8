// A strip in one go, as a script has it: the ticket of one gang is made, what was counted entered, and booked, all in
// one command or nothing of it.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { pieces } from '../yard/paper-shapes.ts';
import { loosePart, type TicketEntry } from '../yard/strip-ticket.ts';
import { decideBooking, shownBooking, writeBooking } from './book-ticket.ts';
import { newTicket } from './make-ticket.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { addEntry } from './ticket-enter.ts';
import { readTicket } from './ticket-facts.ts';
import { ticketBooking } from './ticket-shapes.ts';
import { nextWords } from './ticket-words.ts';

/** How many came back in which condition; a component without any figure was looked for and none was there. */
export const countedByComponent = z.strictObject({
  component: code,
  ready: pieces.optional(),
  readyHidden: pieces.optional(),
  toClean: pieces.optional(),
  toRepair: pieces.optional(),
  quarantine: pieces.optional(),
  scrapped: pieces.optional(),
});

export const ticketStrip = command({
  name: 'ticket.strip',
  input: z.strictObject({
    commandId,
    job: code,
    /** As P01/A1; P01/loose are the loose pieces of the pour. */
    turn: z.string().min(1).max(80),
    lines: z.array(countedByComponent).max(500),
    at: instant.optional(),
    place: code.optional(),
    device: z.string().trim().min(1).max(60).default('command line'),
  }),
  output: z.strictObject({ ...ticketBooking, who: z.string(), part: z.string(), next: z.string() }),
  run: async (book, { commandId: id, turn, lines, at, device, ...of }, context) => {
    const twice = lines.find(
      (line, index) => lines.findIndex((each) => each.component === line.component) < index,
    );
    if (twice !== undefined)
      return refuse('component-twice', `${twice.component} is in the list of what was counted twice.`, {
        field: 'lines',
        hint: 'Maybe add the two up.',
      });
    const made = await newTicket(book, { ...of, ...partOfTurn(turn), at });
    if (!made.ok) return made;
    const number = await book.nextTicketNumber();
    await book.putTicket({ ...made.value, id, number });
    const part = made.value.parts[0]?.part ?? turn;
    const stripped = at ?? made.value.plannedAt;
    const entry = { id: `${id}-counted`, at: stripped, who: context.who, device };
    const counted = entryLines(lines, part);
    if (counted.length > 0) {
      const added = await addEntry(book, { ...made.value, id, number }, { ...entry, lines: counted });
      if (!added.ok) return added;
    }
    const facts = await readTicket(book, id);
    if (!facts.ok) return facts;
    const asked = { at: stripped, who: context.who, uncountedAsExpected: false };
    const decided = await decideBooking(book, facts.value, asked);
    if (!decided.ok) return decided;
    await writeBooking(book, facts.value, decided.value.booked, context.at);
    const shown = shownBooking(facts.value, decided.value);
    const { parts, place } = facts.value.ticket;
    const next = nextWords(parts[0]?.next ?? null, place);
    return answer({ ...shown, who: context.who, part, next });
  },
});

/** What of a pour is stripped: a gang by its turn, or with P01/loose what stands loose there. */
export function partOfTurn(turn: string): {
  readonly pour?: string;
  readonly turns: string[];
  readonly loose: boolean;
} {
  const end = `/${loosePart}`;
  return turn.endsWith(end)
    ? { pour: turn.slice(0, -end.length), turns: [], loose: true }
    : { turns: [turn], loose: false };
}

function entryLines(
  lines: readonly z.output<typeof countedByComponent>[],
  part: string,
): TicketEntry['lines'] {
  return lines.flatMap((line) => {
    const { component } = line;
    const figures = [
      ['ready', line.ready],
      ['ready-hidden', line.readyHidden],
      ['to-clean', line.toClean],
      ['to-repair', line.toRepair],
      ['quarantine', line.quarantine],
      ['scrapped', line.scrapped],
    ] as const;
    const counted = figures.flatMap(([condition, quantity]) =>
      quantity === undefined ? [] : [{ part, component, condition, quantity }],
    );
    return counted.length > 0 ? counted : [{ part, component, condition: 'ready' as const, quantity: 0 }];
  });
}
