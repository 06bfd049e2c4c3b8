// Containers as things with tags: a tag needs a piece of its own at its place, and when a container is moved that one
// piece moves while what is in it stays in it.
import { answer, type Answer, refuse } from '../answer.ts';
import type { Container } from './container.ts';
import { conditions } from './movement.ts';
import type { PieceMove } from './piece-moves.ts';
import type { StockLine } from './quantities.ts';

/** Which piece a container is itself, and where. */
export interface TaggedPiece {
  readonly component: string;
  readonly owner: string;
  readonly place: string;
}

/** One more tag for a piece at a place. Refusal `no-piece`: how many there are, and which tags they bear. */
export function mayTag(
  piece: TaggedPiece,
  containers: readonly Container[],
  stock: readonly StockLine[],
): Answer<null> {
  const { component, owner, place } = piece;
  const there = piecesAt(piece, stock).reduce((sum, line) => sum + line.quantity, 0);
  const tags = tagsAt(piece, containers);
  if (tags.length < there) return answer(null);
  const borne =
    tags.length === 0 ? '' : `, and ${tags.join(', ')} ${tags.length === 1 ? 'is' : 'are'} tagged`;
  return refuse(
    'no-piece',
    `${place} has ${there} ${component} of ${owner}${borne}; there is none for one more tag.`,
    {
      field: 'component',
      hint: 'Maybe its delivery is not booked, or it stands elsewhere.',
    },
  );
}

/** Tags that pieces of a component and owner at a place bear. */
export function tagsAt(
  { component, owner, place }: TaggedPiece,
  containers: readonly Container[],
): readonly string[] {
  return containers
    .filter((each) => each.component === component && each.owner === owner && each.last.place === place)
    .map((each) => each.code);
}

/**
 * The container's own piece from where it stands to another place: transferred, sent back to its supplier, or delivered
 * by it again. Refusal `no-piece`.
 */
export function moveContainer(
  container: Container,
  to: string,
  stock: readonly StockLine[],
  reason: 'transfer' | 'return' | 'delivery' = 'transfer',
): Answer<PieceMove> {
  const { component, owner, last } = container;
  const from = last.place;
  const [line] = piecesAt({ component, owner, place: from }, stock).toSorted(
    (one, other) => conditions.indexOf(one.condition) - conditions.indexOf(other.condition),
  );
  // What a supplier has stands outside the ledger.
  if (line === undefined && reason !== 'delivery')
    return refuse(
      'no-piece',
      `${container.code} is a ${component} of ${owner}, and ${from} has none any more; it cannot be moved to ${to}.`,
      { field: 'place', hint: 'Maybe it was sent away or moved by another paper.' },
    );
  const condition = line?.condition ?? 'ready';
  return answer({ component, quantity: 1, owner, from, to, condition, conditionAfter: condition, reason });
}

function piecesAt(
  { component, owner, place }: TaggedPiece,
  stock: readonly StockLine[],
): readonly StockLine[] {
  return stock.filter(
    (line) =>
      line.component === component && line.owner === owner && line.location === place && line.quantity > 0,
  );
}
