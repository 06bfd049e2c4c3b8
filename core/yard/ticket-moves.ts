// Which pieces a strip ticket moves. Of a part that is taken apart every piece goes to the ticket's place in the
// condition it was counted in; of a gang that stays together only what cannot stay in it. What is missing goes to the
// lost, of the owner whose mark was not found, else ours first.
import { answer, type Answer, refuse } from '../answer.ts';
import type { LocationKind } from './movement.ts';
import { type Condition, conditions, isLoose } from './movement.ts';
import type { PieceMove } from './piece-moves.ts';
import type { PiecePool, PooledLine } from './piece-pool.ts';
import { ticketName, type TicketPart } from './strip-ticket.ts';
import { type CountedLine, type ExtraCount, noPieces } from './ticket-counts.ts';
import { neverIssued } from './ticket-expected.ts';

export interface TicketPlaces {
  readonly ticket: { readonly number: number; readonly pour: string };
  /** Where what is taken apart is laid. */
  readonly place: string;
  readonly lost: string;
  readonly kinds: ReadonlyMap<string, LocationKind>;
  /** Whose pieces are taken to be extra where nobody looked at the mark. */
  readonly ours: string | undefined;
}

export interface TicketMove extends PieceMove {
  readonly remark: string;
}

/** How a line is taken to have come back that nobody counted. */
export function asExpected(line: CountedLine): CountedLine {
  const quantity = line.expected.quantity;
  const condition: Condition = staysTogether(line.part) ? 'ready' : 'to-clean';
  return {
    ...line,
    counted: { ...noPieces, [condition]: quantity },
    marked: quantity === 0 ? [] : [{ owner: null, condition, quantity }],
    missing: 0,
  };
}

/** Whether the gang stays a gang after the strip: it flies on, is re-ganged later, or stands by. */
export function staysTogether({ next }: Pick<TicketPart, 'next'>): boolean {
  return next !== null && next.how !== 'break-down';
}

/** Codes: not-enough, not-of-owner. */
export function movesOfLine(
  line: CountedLine,
  isUncounted: boolean,
  pool: PiecePool,
  places: TicketPlaces,
): Answer<readonly TicketMove[]> {
  const { part, expected, marked, missing } = line;
  const { component } = expected;
  const from = sourceOf(line, places);
  const moves: TicketMove[] = [];
  const add = (taken: readonly PooledLine[], after: Condition | null): void => {
    for (const each of taken) {
      const move = after === null ? lostMove(each, part, places) : backMove(each, after, line, places);
      if (move !== null) moves.push(move);
    }
  };
  const seen = marked.filter(({ owner }) => owner !== null);
  for (const { owner, condition, quantity } of seen) {
    const taken = pool.take({
      ...from,
      component,
      quantity,
      owner: owner ?? undefined,
      conditions: prefer(condition, from),
    });
    if (sum(taken) < quantity) return notOfOwner(line, owner ?? '', quantity, sum(taken));
    add(taken, condition);
  }
  // A ticket of late finds leaves what is still missing where it is.
  const lost = expected.sought === undefined ? pool.take({ ...from, component, quantity: missing }) : [];
  if (expected.sought === undefined && sum(lost) < missing) return notEnough(line, missing, sum(lost));
  add(lost, null);
  for (const { owner, condition, quantity } of marked) {
    if (owner !== null) continue;
    const taken = pool.take({ ...from, component, quantity, conditions: prefer(condition, from) });
    if (sum(taken) < quantity) return notEnough(line, quantity, sum(taken));
    // What nobody looked at stays in the gang as it was.
    if (!(isUncounted && staysTogether(part))) add(taken, condition);
  }
  return answer(moves);
}

interface Source {
  readonly locations: readonly string[];
  readonly conditions: readonly Condition[];
  /** Others than those of the ticket lie there too, perhaps dirty: of a yard always the ready ones are taken. */
  readonly isYard: boolean;
  readonly isAnyones: boolean;
}

/** A gang or a pour gives its own pieces; where nothing was issued any loose ones do, the place named first. */
function sourceOf({ expected }: CountedLine, { kinds, lost }: TicketPlaces): Source {
  if (expected.sought !== undefined) return { locations: [lost], conditions, isYard: false, isAnyones: true };
  if (isBookedThere(expected.from, kinds))
    return { locations: [expected.from], conditions, isYard: false, isAnyones: true };
  const loose = [...kinds].flatMap(([code, kind]) => (isLoose(kind) && code !== expected.from ? [code] : []));
  return {
    locations: [expected.from, ...loose.sort()],
    conditions: neverIssued,
    isYard: true,
    isAnyones: false,
  };
}

/** Whether what a line expects is booked to a gang or a pour, not to a yard that it was never issued from. */
export function isBookedThere(location: string, kinds: ReadonlyMap<string, LocationKind>): boolean {
  const kind = kinds.get(location);
  return kind === 'gang' || kind === 'pour';
}

/** Pieces found in the condition they were booked in first, so that as few as can be change it. */
function prefer(condition: Condition, from: Source): readonly Condition[] {
  if (from.isYard) return from.conditions;
  return [
    ...from.conditions.filter((each) => each === condition),
    ...from.conditions.filter((each) => each !== condition),
  ];
}

/** In these a piece may stay in a gang that stays together: the gang is cleaned as it hangs. */
const mayStay: readonly Condition[] = ['ready', 'ready-hidden', 'to-clean'];

function backMove(
  taken: PooledLine,
  after: Condition,
  { part, expected }: CountedLine,
  { ticket, place, kinds }: TicketPlaces,
): TicketMove | null {
  const stays = staysTogether(part) && mayStay.includes(after);
  const to = stays ? taken.location : place;
  if (to === taken.location && after === taken.condition) return null;
  const { component, quantity, owner, location, condition } = taken;
  const isYard = to !== location && !isBookedThere(location, kinds) && kinds.get(location) !== 'site';
  const reason = expected.sought !== undefined ? 'found' : isYard ? 'transfer' : 'strip';
  const of = `${ticketName(ticket)}, ${partWords(part, ticket.pour)}`;
  const remark =
    expected.sought === undefined ? `Strip ticket ${of}.` : `Strip ticket ${of}: found late, it was missing.`;
  return { component, quantity, owner, from: location, to, condition, conditionAfter: after, reason, remark };
}

function lostMove(taken: PooledLine, part: TicketPart, { ticket, lost }: TicketPlaces): TicketMove {
  const { component, quantity, owner, location, condition } = taken;
  const remark = `Strip ticket ${ticketName(ticket)}, ${partWords(part, ticket.pour)}: not come back.`;
  return {
    component,
    quantity,
    owner,
    from: location,
    to: lost,
    condition,
    conditionAfter: condition,
    reason: 'lost',
    remark,
  };
}

/** More than was expected: it is there, so it comes from where pieces go that nobody can find. Code: no-owner. */
export function movesOfExtra(
  extra: ExtraCount,
  part: TicketPart,
  places: TicketPlaces,
): Answer<readonly TicketMove[]> {
  const moves: TicketMove[] = [];
  for (const { owner, condition, quantity } of extra.marked) {
    const of = owner ?? places.ours;
    if (of === undefined)
      return refuse('no-owner', `Whose the extra ${extra.component} of ${extra.part} are is not known.`, {
        field: 'owner',
        hint: 'Maybe name the owner by the mark on the piece.',
      });
    const remark = `Strip ticket ${ticketName(places.ticket)}, ${partWords(part, places.ticket.pour)}: more than expected.`;
    moves.push({
      component: extra.component,
      quantity,
      owner: of,
      from: places.lost,
      to: places.place,
      condition,
      conditionAfter: condition,
      reason: 'found',
      remark,
    });
  }
  return answer(moves);
}

/** "pour P01, gang G-3 (P01/A1)" */
function partWords({ part, turn, gang }: TicketPart, pour: string): string {
  if (gang === null) return turn === null ? `pour ${pour}, loose pieces` : `pour ${pour}, turn ${part}`;
  return `pour ${pour}, gang ${gang}${turn === null ? '' : ` (${turn})`}`;
}

function notEnough({ part, expected }: CountedLine, wanted: number, there: number) {
  const { component, from, sought } = expected;
  const where = sought === undefined ? `${from} and where else it lies loose` : 'the lost';
  return refuse(
    'not-enough',
    `${wanted} of ${component} would be booked for ${part.part}; ${where} has ${there}.`,
    {
      field: 'ticket',
      hint: 'Maybe they were moved since the ticket was made: have its expected pieces worked out anew.',
    },
  );
}

function notOfOwner({ part, expected }: CountedLine, owner: string, wanted: number, there: number) {
  return refuse(
    'not-of-owner',
    `${wanted} of ${expected.component} marked ${owner} were counted for ${part.part}; ${there} of theirs are booked there.`,
    {
      field: 'owner',
      hint: 'Maybe pieces of two owners were mixed: take back the mark, or enter what is over as extra.',
    },
  );
}

function sum(lines: readonly { readonly quantity: number }[]): number {
  return lines.reduce((all, line) => all + line.quantity, 0);
}
