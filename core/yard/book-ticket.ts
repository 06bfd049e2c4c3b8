// A strip ticket becomes movements, all at once: what came back, in which condition, what is missing against whom, what
// is more than expected, and what became of the gangs. Nothing here reads or writes.
import { answer, type Answer, refuse } from '../answer.ts';
import { kindsOf, makeUpChanged, notCounted, notOpen, tooEarly, tooMany } from './check-ticket-booking.ts';
import type { NewGangStep } from './gang-steps.ts';
import type { Movement } from './movement.ts';
import { outsidePlaces } from './outside-places.ts';
import { type PiecePool, piecePool } from './piece-pool.ts';
import { type StripTicket, ticketName, type TicketResult } from './strip-ticket.ts';
import type { TicketToBook } from './ticket-to-book.ts';
import { takingOrder } from './take-from.ts';
import {
  type CountedLine,
  countedLines,
  type ExtraCount,
  extraCounts,
  noPieces,
  total,
} from './ticket-counts.ts';
import { stepsOfTicket } from './ticket-gang-steps.ts';
import { asExpected, movesOfExtra, movesOfLine, type TicketMove, type TicketPlaces } from './ticket-moves.ts';

export interface BookedTicket {
  readonly movements: readonly Movement[];
  readonly steps: readonly NewGangStep[];
  readonly result: TicketResult;
}

/**
 * Codes: ticket-booked, ticket-dropped, not-counted, nothing-counted, more-than-expected, make-up-changed, not-enough,
 * not-of-owner, no-owner, no-place, too-early, those of gang steps.
 */
export function bookTicket(of: TicketToBook): Answer<BookedTicket> {
  const { ticket, entries, at, who } = of;
  const refusal = notOpen(ticket) ?? tooEarly(of);
  if (refusal !== null) return { ok: false, error: refusal };
  const lines = countedLines(ticket, entries);
  const extras = extraCounts(ticket, entries);
  const asked = notCounted(of, lines, extras) ?? tooMany(lines, ticket) ?? makeUpChanged(of, lines);
  if (asked !== null) return { ok: false, error: asked };
  const places = placesOf(of);
  if (!places.ok) return places;
  const moves = movesOf(of, lines, extras, places.value);
  if (!moves.ok) return moves;
  const steps = stepsOfTicket(ticket, of.gangs, at);
  if (!steps.ok) return steps;
  return answer({
    movements: moves.value.all.map((move, index) => ({
      ...move,
      id: `${ticket.id}-${index + 1}`,
      at,
      who,
      noteNumber: ticketName(ticket),
      basis: null,
      basisDate: null,
      reverses: null,
      paper: ticket.id,
    })),
    steps: steps.value,
    result: { at, who, lines: resultLines(ticket, lines, extras), missing: moves.value.missing },
  });
}

function placesOf({ ticket, locations, owners }: TicketToBook): Answer<TicketPlaces> {
  const { lost } = outsidePlaces(locations, null);
  if (typeof lost !== 'string') return { ok: false, error: { ...lost.missing, field: 'ticket' } };
  const kinds = kindsOf(locations);
  if (!kinds.has(ticket.place))
    return refuse('unknown-location', `There is no location ${ticket.place}.`, { field: 'place' });
  const ours = takingOrder(owners.filter(({ kind }) => kind === 'ours')).owners[0];
  return answer({ ticket, place: ticket.place, lost, kinds, ours });
}

interface TicketMoves {
  readonly all: readonly TicketMove[];
  readonly missing: TicketResult['missing'];
}

function movesOf(
  of: TicketToBook,
  lines: readonly CountedLine[],
  extras: readonly ExtraCount[],
  places: TicketPlaces,
): Answer<TicketMoves> {
  const pool = poolOf(of, places.lost);
  const all: TicketMove[] = [];
  const missing: TicketResult['missing'] = [];
  for (const line of lines) {
    const isUncounted = !line.isCounted && of.ticket.follows === null;
    const moves = movesOfLine(isUncounted ? asExpected(line) : line, isUncounted, pool, places);
    if (!moves.ok) return moves;
    all.push(...moves.value);
    for (const { reason, component, owner, quantity } of moves.value) {
      if (reason !== 'lost') continue;
      const part = line.part.part;
      const known = missing.find(
        (each) => each.part === part && each.component === component && each.owner === owner,
      );
      if (known === undefined) missing.push({ part, component, owner, quantity });
      else known.quantity += quantity;
    }
  }
  for (const extra of extras) {
    const part = of.ticket.parts.find((each) => each.part === extra.part);
    if (part === undefined) continue;
    const moves = movesOfExtra(extra, part, places);
    if (!moves.ok) return moves;
    all.push(...moves.value);
  }
  return answer({ all, missing });
}

function poolOf({ stock, lost, owners }: TicketToBook, lostPlace: string): PiecePool {
  const inside = stock.filter(({ location }) => location !== lostPlace);
  return piecePool(
    [...inside, ...lost.map((line) => ({ ...line, location: lostPlace }))],
    takingOrder(owners),
  );
}

function resultLines(
  { follows }: StripTicket,
  lines: readonly CountedLine[],
  extras: readonly ExtraCount[],
): TicketResult['lines'] {
  const isLate = follows !== null;
  const ofExpected = lines.map((line) => {
    const isUncounted = !line.isCounted && !isLate;
    const { counted, missing } = isUncounted ? asExpected(line) : line;
    const extra = extras.find(
      (each) => each.part === line.part.part && each.component === line.expected.component,
    );
    return {
      ...resultLine(line.part.part, line.expected.component, counted),
      expected: line.expected.quantity,
      missing: isLate ? 0 : missing,
      found: (isLate ? total(counted) : 0) + total(extra?.counted ?? noPieces),
      ...(isUncounted && { uncounted: true as const }),
    };
  });
  const ofExtra = extras
    .filter(
      (each) =>
        !lines.some((line) => line.part.part === each.part && line.expected.component === each.component),
    )
    .map((each) => ({ ...resultLine(each.part, each.component, noPieces), found: total(each.counted) }));
  return [...ofExpected, ...ofExtra];
}

function resultLine(part: string, component: string, counted: CountedLine['counted']) {
  return {
    part,
    component,
    expected: 0,
    ready: counted.ready,
    readyHidden: counted['ready-hidden'],
    toClean: counted['to-clean'],
    toRepair: counted['to-repair'],
    quarantine: counted.quarantine,
    scrapped: counted.scrapped,
    missing: 0,
    found: 0,
  };
}
