// What a strip ticket expects back. A gang that stands there gives what is booked to it, loose pieces what was issued
// to the pour; where nothing was ever issued, the pieces of the design are taken to be those that the yard holds.
import { type Condition, isLoose, type Location } from './movement.ts';
import { loosePieces, type PiecePool, piecePool } from './piece-pool.ts';
import { type Pieces, piecesOf } from './piece-moves.ts';
import type { StockLine } from './quantities.ts';
import type { TicketPart } from './strip-ticket.ts';
import type { TakingOrder } from './take-from.ts';

/** A part before its expected pieces are known. */
export interface PlannedPart extends Omit<TicketPart, 'expected'> {
  /** The location that its pieces are booked to; null where nothing was issued to it. */
  readonly bookedTo: string | null;
  /** Of the design or the pour; what is booked to a gang or a pour goes before. */
  readonly pieces: Pieces;
}

export interface ExpectedFrom {
  readonly stock: readonly StockLine[];
  readonly locations: readonly Location[];
  readonly order: Pick<TakingOrder, 'owners' | 'notOf'>;
  /** Codes of components in the order of the catalogue, which is that of the ticket. */
  readonly catalogue: readonly string[];
  /** Pieces that open tickets already expect from the yard. */
  readonly claimed: readonly {
    readonly component: string;
    readonly quantity: number;
    readonly from: string;
  }[];
}

/** What stood at a wall was ready when it was set; what was stripped and not booked may lie there uncleaned. */
export const neverIssued: readonly Condition[] = ['ready', 'ready-hidden', 'to-clean'];

export function expectedParts(parts: readonly PlannedPart[], of: ExpectedFrom): readonly TicketPart[] {
  const yard = piecePool(loosePieces(of.stock, of.locations), of.order);
  for (const { component, quantity, from } of of.claimed)
    yard.take({ component, quantity, locations: [from], conditions: neverIssued });
  return parts.map(({ bookedTo, pieces, ...part }) => ({
    ...part,
    expected:
      bookedTo === null
        ? inOrder(pieces, of).map((wanted) => fromYard(yard, wanted, of))
        : inOrder(
            piecesOf(of.stock.filter((line) => line.location === bookedTo && line.quantity > 0)),
            of,
          ).map((there) => ({ ...there, from: bookedTo })),
  }));
}

interface Wanted {
  readonly component: string;
  readonly quantity: number;
}

function fromYard(yard: PiecePool, wanted: Wanted, of: ExpectedFrom): TicketPart['expected'][number] {
  const { component } = wanted;
  const taken = yard.take({ ...wanted, conditions: neverIssued });
  const quantity = taken.reduce((sum, line) => sum + line.quantity, 0);
  const from = taken[0]?.location ?? of.locations.find(({ kind }) => isLoose(kind))?.code ?? '';
  const unbooked = wanted.quantity - quantity;
  return { component, quantity, from, ...(unbooked > 0 && { unbooked }) };
}

function inOrder(pieces: Pieces, { catalogue }: ExpectedFrom): readonly Wanted[] {
  const place = (component: string): number => {
    const index = catalogue.indexOf(component);
    return index < 0 ? catalogue.length : index;
  };
  return Object.entries(pieces)
    .filter(([, quantity]) => quantity > 0)
    .sort(([one], [other]) => place(one) - place(other) || (one < other ? -1 : 1))
    .map(([component, quantity]) => ({ component, quantity }));
}
