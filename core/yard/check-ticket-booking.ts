// Whether a strip ticket may be booked as it stands. What nobody counted is asked about, never guessed; a ticket that was
// booked says by whom, so that two people who book it hear of each other.
import type { Refusal } from '../answer.ts';
import { momentMs } from './moment.ts';
import type { Location, LocationKind } from './movement.ts';
import { type StripTicket, ticketName } from './strip-ticket.ts';
import { type CountedLine, type ExtraCount, total } from './ticket-counts.ts';
import { isBookedThere } from './ticket-moves.ts';
import type { TicketToBook } from './ticket-to-book.ts';

/** Refusal of anything done to a ticket that is not open any more, by whom and when it was booked. */
export function notOpen(ticket: StripTicket): Refusal | null {
  if (ticket.state === 'open') return null;
  const name = ticketName(ticket);
  if (ticket.state === 'dropped')
    return {
      code: 'ticket-dropped',
      message: `${name} was dropped.`,
      field: 'ticket',
      hint: 'Maybe make another.',
    };
  const { who = '', at = '' } = ticket.result ?? {};
  return {
    code: 'ticket-booked',
    message: `${name} was booked by ${who} at ${at}.`,
    field: 'ticket',
    hint: 'Maybe what turned up since belongs on a ticket of late finds.',
  };
}

export function tooEarly({ ticket, gangs, at }: TicketToBook): Refusal | null {
  const ms = momentMs(at);
  if (ms === null)
    return { code: 'bad-instant', message: `"${at}" is not a moment with its offset.`, field: 'at' };
  for (const { gang: tag } of ticket.parts) {
    const gang = gangs.find(({ code }) => code === tag);
    if (gang !== undefined && ms < (momentMs(gang.last.at) ?? 0))
      return {
        code: 'too-early',
        message: `${gang.code} is ${gang.last.state} since ${gang.last.at}; it cannot have been stripped at ${at}.`,
        field: 'at',
        hint: 'Maybe the day is wrong, or a clock was set back.',
      };
  }
  return null;
}

export function notCounted(
  { ticket, uncountedAsExpected }: TicketToBook,
  lines: readonly CountedLine[],
  extras: readonly ExtraCount[],
): Refusal | null {
  if (ticket.follows !== null) {
    if (extras.length > 0 || lines.some(({ counted }) => total(counted) > 0)) return null;
    return {
      code: 'nothing-counted',
      message: `Nothing is counted on ${ticketName(ticket)}.`,
      field: 'ticket',
    };
  }
  const open = lines.filter((line) => !line.isCounted && line.expected.quantity > 0);
  if (open.length === 0 || uncountedAsExpected) return null;
  const words = ticket.parts.flatMap(({ part, expected }) => {
    const own = open.filter((line) => line.part.part === part);
    if (own.length === 0) return [];
    const isAll = own.length === expected.filter(({ quantity }) => quantity > 0).length;
    return [
      `${part}: ${isAll ? 'nothing of it' : `not ${own.map((line) => line.expected.component).join(', ')}`}`,
    ];
  });
  return {
    code: 'not-counted',
    message: `Nobody counted all of ${ticketName(ticket)}; ${words.join('; ')}.`,
    field: 'lines',
    hint: 'Maybe count it; enter 0 where none came back; or book it as come back as expected.',
  };
}

export function tooMany(lines: readonly CountedLine[], ticket: StripTicket): Refusal | null {
  const line = lines.find(({ missing }) => missing < 0);
  if (line === undefined) return null;
  return {
    code: 'more-than-expected',
    message: `${line.most - line.missing} of ${line.expected.component} are counted for ${line.part.part} on ${ticketName(ticket)}; ${line.most} are expected.`,
    field: 'lines',
    hint: 'Maybe take some back, or enter what is over as extra.',
  };
}

/** What stands in a gang or at a pour must be what the ticket was made for. */
export function makeUpChanged(
  { ticket, stock, locations }: TicketToBook,
  lines: readonly CountedLine[],
): Refusal | null {
  if (ticket.follows !== null) return null;
  const kinds = kindsOf(locations);
  for (const { part, gang } of ticket.parts) {
    const own = lines.filter((line) => line.part.part === part);
    const from = own.find((line) => isBookedThere(line.expected.from, kinds))?.expected.from ?? gang;
    if (from === null) continue;
    const there = new Map<string, number>();
    for (const { component, location, quantity } of stock)
      if (location === from) there.set(component, (there.get(component) ?? 0) + quantity);
    for (const { expected } of own)
      if (expected.from === from)
        there.set(expected.component, (there.get(expected.component) ?? 0) - expected.quantity);
    const differing = [...there].filter(([, by]) => by !== 0);
    if (differing.length === 0) continue;
    const words = differing.map(
      ([component, by]) => `${by > 0 ? `${by} more` : `${-by} fewer`} ${component}`,
    );
    return {
      code: 'make-up-changed',
      message: `${from} is booked otherwise than when ${ticketName(ticket)} was made: ${words.join(', ')}.`,
      field: 'ticket',
      hint: 'Maybe have the expected pieces worked out anew; what was counted stays.',
    };
  }
  return null;
}

export function kindsOf(locations: readonly Location[]): ReadonlyMap<string, LocationKind> {
  return new Map(locations.map(({ code, kind }) => [code, kind]));
}
