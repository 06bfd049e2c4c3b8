// Pieces that go from place to place together: decided first, then written as movements of one command with one
// moment. Ids follow from the command's, so that the same command sent twice names the same movements.
import { type Answer, answer } from '../answer.ts';
import type { Condition, Movement, Reason } from './movement.ts';
import type { StockLine } from './quantities.ts';
import { takeFrom, type TakingOrder } from './take-from.ts';

/** Quantities by component. */
export type Pieces = Readonly<Record<string, number>>;

export interface PieceMove {
  readonly component: string;
  readonly quantity: number;
  readonly owner: string;
  readonly from: string;
  readonly to: string;
  readonly condition: Condition;
  readonly conditionAfter: Condition;
  readonly reason: Reason;
}

export interface MovesBooking {
  /** What their ids begin with. */
  readonly id: string;
  readonly at: string;
  readonly who: string;
  readonly remark: string | null;
  readonly paper: string | null;
}

export function movementsOf(moves: readonly PieceMove[], booking: MovesBooking): readonly Movement[] {
  const { id, at, who, remark, paper } = booking;
  return moves.map((move, index) => ({
    ...move,
    id: `${id}-${index + 1}`,
    at,
    who,
    noteNumber: null,
    remark,
    basis: null,
    basisDate: null,
    reverses: null,
    paper,
  }));
}

/** What is to be taken, from where, and whose goes first. */
export interface Issue {
  readonly stock: readonly StockLine[];
  readonly pieces: Pieces;
  /** Locations that may be taken from, the first first. */
  readonly from: readonly string[];
  readonly order: Pick<TakingOrder, 'owners' | 'notOf'>;
}

/** A component of which there are too few. */
export interface ShortPieces {
  readonly component: string;
  readonly wanted: number;
  readonly there: number;
}

/**
 * Ready pieces issued to a place. Refusal `not-enough` names every component that is short, not the first alone.
 */
export function issuePieces(issue: Issue, to: string): Answer<readonly PieceMove[]> {
  const moves: PieceMove[] = [];
  const messages: string[] = [];
  const hints: string[] = [];
  for (const [component, quantity] of wantedOf(issue.pieces)) {
    const taken = takeFrom(issue.stock, { component, quantity }, { ...issue.order, locations: issue.from });
    if (!taken.ok) {
      messages.push(taken.error.message);
      if (taken.error.hint !== undefined) hints.push(`${component}: ${taken.error.hint}`);
      continue;
    }
    for (const { owner, location, condition, quantity: pieces } of taken.value)
      moves.push({
        component,
        quantity: pieces,
        owner,
        from: location,
        to,
        condition,
        conditionAfter: condition,
        reason: 'issue',
      });
  }
  if (messages.length === 0) return answer(moves);
  return {
    ok: false,
    error: { code: 'not-enough', message: messages.join(' '), field: 'from', hint: hints.join(' ') },
  };
}

/** Every component of which fewer ready pieces are there than are wanted. */
export function shortPieces({ stock, pieces, from, order }: Issue): readonly ShortPieces[] {
  return wantedOf(pieces).flatMap(([component, wanted]) => {
    const there = stock
      .filter(
        (line) =>
          line.component === component &&
          line.quantity > 0 &&
          from.includes(line.location) &&
          (line.condition === 'ready' || line.condition === 'ready-hidden') &&
          order.notOf?.includes(line.owner) !== true,
      )
      .reduce((sum, line) => sum + line.quantity, 0);
    return there < wanted ? [{ component, wanted, there }] : [];
  });
}

function wantedOf(pieces: Pieces): readonly (readonly [string, number])[] {
  return Object.entries(pieces)
    .filter(([, quantity]) => quantity > 0)
    .sort(([one], [other]) => (one < other ? -1 : 1));
}

/** The sum of lines by component, of all owners and conditions. */
export function piecesOf(lines: readonly Pick<StockLine, 'component' | 'quantity'>[]): Pieces {
  const sums: Record<string, number> = {};
  for (const { component, quantity } of lines) sums[component] = (sums[component] ?? 0) + quantity;
  return sums;
}
