// Books a strip ticket, or says what booking it would do: gathers what the book knows, lets the pure core decide, and
// writes all of it in one command. Also how a booking is told.
import { answer, type Answer } from '../answer.ts';
import type { BookComponent, BookReader, BookWriter, StockOf } from '../book/book.ts';
import { type BookedTicket, bookTicket } from '../yard/book-ticket.ts';
import type { Movement, Owner } from '../yard/movement.ts';
import type { PooledLine } from '../yard/piece-pool.ts';
import { type StripTicket, ticketName } from '../yard/strip-ticket.ts';
import { byCode, found } from './by-code.ts';
import type { TicketWithEntries } from './ticket-facts.ts';
import { nextWords } from './ticket-words.ts';

export interface BookingAsked {
  readonly at: string;
  readonly who: string;
  readonly uncountedAsExpected: boolean;
}

export interface DecidedBooking {
  readonly booked: BookedTicket;
  readonly components: readonly BookComponent[];
  readonly owners: readonly Owner[];
}

export async function decideBooking(
  book: BookReader,
  facts: TicketWithEntries,
  asked: BookingAsked,
): Promise<Answer<DecidedBooking>> {
  const { ticket, entries } = facts;
  const [stock, locations, owners, gangs, components, lost] = await Promise.all([
    book.stock(asked.at, stockOf(ticket)),
    book.locations(),
    book.owners(),
    book.gangs(),
    book.components(),
    stillLost(book, facts),
  ]);
  const booked = bookTicket({ ticket, entries, ...asked, stock, locations, owners, gangs, lost });
  return booked.ok ? answer({ booked: booked.value, components, owners }) : booked;
}

/** What a ticket can move: what it expects, wherever that lies, and whatever its gangs hold. */
function stockOf({ parts }: StripTicket): StockOf {
  return {
    components: [...new Set(parts.flatMap(({ expected }) => expected.map(({ component }) => component)))],
    locations: [
      ...new Set(
        parts.flatMap(({ gang, expected }) => [
          ...(gang === null ? [] : [gang]),
          ...expected.map(({ from }) => from),
        ]),
      ),
    ],
  };
}

/** Movements, gang steps and the ticket's result: all of it, or none. */
export async function writeBooking(
  book: BookWriter,
  { ticket }: TicketWithEntries,
  { movements, steps, result }: BookedTicket,
  recordedAt: string,
): Promise<void> {
  await book.appendMovements(movements, recordedAt);
  for (const step of steps) await book.addGangStep(step);
  await book.putTicket({ ...ticket, state: 'booked', result });
}

/** What the first ticket booked as lost, less what earlier tickets of late finds brought back. */
async function stillLost(
  book: BookReader,
  { follows }: TicketWithEntries,
): Promise<readonly Omit<PooledLine, 'location'>[]> {
  if (follows === null) return [];
  const others = await book.tickets({ follows: follows.id, state: 'booked' });
  const movementsOf = async (paper: string): Promise<readonly Movement[]> =>
    (await book.movements({ paper, limit: 1_000_000 })).filter(({ reversedBy }) => reversedBy === null);
  const lost = (await movementsOf(follows.id)).filter(({ reason }) => reason === 'lost');
  const back: Movement[] = [];
  for (const { id } of others)
    back.push(...(await movementsOf(id)).filter(({ reason }) => reason === 'found'));
  const lines = new Map<string, Omit<PooledLine, 'location'>>();
  const add = ({ component, owner, condition }: Movement, quantity: number): void => {
    const key = JSON.stringify([component, owner, condition]);
    const before = lines.get(key)?.quantity ?? 0;
    lines.set(key, { component, owner, condition, quantity: before + quantity });
  };
  for (const movement of lost) add(movement, movement.quantity);
  for (const movement of back) add(movement, -movement.quantity);
  return [...lines.values()].filter(({ quantity }) => quantity > 0);
}

export function shownBooking(
  { ticket }: Pick<TicketWithEntries, 'ticket'>,
  { booked, components, owners }: DecidedBooking,
) {
  const { movements, steps, result } = booked;
  const component = byCode(components);
  const owner = byCode(owners);
  return {
    ticket: ticket.id,
    name: ticketName(ticket),
    at: result.at,
    movements: movements.length,
    moves: shownMoves(movements, components),
    lines: result.lines,
    missing: result.missing.map((line) => {
      const { name, valueCents } = found(component, line.component);
      const { name: ownerName, kind: ownerKind } = found(owner, line.owner);
      const value = valueCents === undefined ? null : valueCents * line.quantity;
      return { ...line, name, ownerName, ownerKind, valueCents: value };
    }),
    gangs: ticket.parts.flatMap(({ gang, next }) => {
      const last = steps.findLast((step) => step.gang === gang);
      return gang === null || last === undefined
        ? []
        : [{ gang, state: last.state, next: nextWords(next, ticket.place) }];
    }),
    cautions: cautionsOf(ticket),
  };
}

/** Late finds are cleared by nobody: their gangs were stripped by the first ticket. */
export function cautionsOf(ticket: Pick<StripTicket, 'cleared' | 'follows'>): string[] {
  return ticket.cleared === null && ticket.follows === null ? [noClearance] : [];
}

const noClearance =
  'No clearance is entered on this ticket: nobody is named who cleared the strip. A forecast is never a release.';

/** By where from, where to, condition and reason, in the order in which they first come. */
function shownMoves(movements: readonly Movement[], components: readonly BookComponent[]) {
  const groups = new Map<string, { of: Movement; pieces: Map<string, number> }>();
  for (const movement of movements) {
    const { from, to, conditionAfter, reason, component, quantity } = movement;
    const key = JSON.stringify([from, to, conditionAfter, reason]);
    const group = groups.get(key) ?? { of: movement, pieces: new Map<string, number>() };
    groups.set(key, group);
    group.pieces.set(component, (group.pieces.get(component) ?? 0) + quantity);
  }
  return [...groups.values()].map(({ of: { from, to, conditionAfter, reason }, pieces }) => ({
    from,
    to,
    conditionAfter,
    reason,
    components: components.flatMap(({ code }) => {
      const quantity = pieces.get(code);
      return quantity === undefined ? [] : [{ component: code, quantity }];
    }),
  }));
}
