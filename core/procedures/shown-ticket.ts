// A strip ticket as the doors show it and the sheet prints it: parts with where each goes next, and of every component
// what is expected, what was counted, what it is taken for.
import { answer, type Answer } from '../answer.ts';
import type { BookComponent, BookReader } from '../book/book.ts';
import type { UnitSystem } from '../units/length.ts';
import type { StripTicket, TicketEntry } from '../yard/strip-ticket.ts';
import { countedLines, extraCounts } from '../yard/ticket-counts.ts';
import { byCode, found } from './by-code.ts';
import { readTicket, stillMissing, ticketHeadOf, type TicketWithEntries } from './ticket-facts.ts';
import { lookAlikeWords, nextWords, partTitle } from './ticket-words.ts';

export async function readShownTicket(book: BookReader, asked: string, units?: UnitSystem) {
  const read = await readTicket(book, asked);
  if (!read.ok) return read;
  const { ticket, entries, late } = read.value;
  const job = await book.job(ticket.job);
  const parts = await shownParts(book, ticket, entries, units ?? job?.units ?? 'us');
  return answer({
    job,
    facts: read.value,
    shown: {
      ticket: ticketHeadOf(read.value),
      parts,
      entries: entries.map(shownEntryOf),
      late: late
        .filter(({ state }) => state !== 'dropped')
        .map(({ id, number, state }) => ({ id, name: `S-${number}`, state })),
      stillMissing: [...stillMissing(ticket, late)],
    },
  }) satisfies Answer<{ readonly facts: TicketWithEntries }>;
}

export async function shownParts(
  book: BookReader,
  ticket: Pick<StripTicket, 'parts' | 'pour' | 'place' | 'state'>,
  entries: readonly Pick<TicketEntry, 'lines'>[],
  units: UnitSystem,
) {
  const components = await book.components();
  const component = byCode(components);
  const { words } = await lookAlikeWords(book, components, units);
  const lines = countedLines(ticket, entries);
  const extras = extraCounts(ticket, entries);
  return ticket.parts.map((part) => ({
    part: part.part,
    turn: part.turn,
    gang: part.gang,
    design: part.design,
    title: partTitle(part, ticket.pour),
    next: part.next,
    nextWords: nextWords(part.next, ticket.place),
    expected: lines
      .filter((line) => line.part.part === part.part)
      .map(({ expected, counted, isCounted, missing }) => ({
        component: expected.component,
        ...namesOf(component, expected.component),
        quantity: expected.quantity,
        sought: expected.sought ?? 0,
        unbooked: expected.unbooked ?? 0,
        from: expected.from,
        lookAlike: words.get(expected.component) ?? null,
        isCounted,
        counted,
        // What nobody counted was asked about, and taken to have come back.
        missing: ticket.state === 'booked' && !isCounted && expected.sought === undefined ? 0 : missing,
      })),
    extra: extras
      .filter((extra) => extra.part === part.part)
      .map((extra) => ({
        component: extra.component,
        ...namesOf(component, extra.component),
        counted: extra.counted,
      })),
  }));
}

function namesOf(components: ReadonlyMap<string, BookComponent>, code: string) {
  const { name, kind } = found(components, code);
  return { name, kind };
}

function shownEntryOf({ id, at, who, device, lines }: TicketEntry) {
  const pieces = lines.reduce((sum, { quantity }) => sum + quantity, 0);
  return { id, at, who, device, lines: lines.length, pieces };
}
