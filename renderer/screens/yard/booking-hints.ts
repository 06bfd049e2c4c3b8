// What a reason usually means for the places and conditions of a slip: only what the form begins with. The
// core decides what may be booked.
import type { StockRow } from './yard-words.ts';
import type { BookedReason } from './booking-draft.ts';

type PlaceKind = StockRow['locationKind'];
type Condition = StockRow['condition'];

export interface ReasonHint {
  /** Kinds of places that the form offers first, in this order. */
  readonly from: readonly PlaceKind[];
  readonly to: readonly PlaceKind[];
  readonly condition: Condition;
  readonly conditionAfter: Condition;
  readonly words: string;
}

const inHand: readonly PlaceKind[] = ['yard', 'rack', 'site'];

export const reasonHints: Readonly<Record<BookedReason, ReasonHint>> = {
  delivery: hint(['supplier'], ['yard', 'rack'], 'ready', 'ready', 'Pieces come from a supplier.'),
  return: hint(['yard', 'rack'], ['supplier'], 'ready', 'ready', 'Pieces go back to their supplier.'),
  transfer: hint(['yard', 'rack'], ['yard', 'rack', 'site'], 'ready', 'ready', 'From one place to another.'),
  'hire-on': hint(['supplier'], ['yard', 'rack', 'site'], 'ready', 'ready', 'On hire from here on.'),
  'hire-off': hint(['yard', 'rack'], ['supplier'], 'ready', 'ready', 'Off hire, back to its owner.'),
  'break-down': hint(
    ['gang'],
    ['yard', 'rack', 'site'],
    'ready',
    'to-clean',
    'Out of a gang that is broken down.',
  ),
  issue: hint(['yard', 'rack'], ['site', 'gang', 'pour'], 'ready', 'ready', 'Out of the yard to the site.'),
  strip: hint(['site'], ['yard', 'rack'], 'ready', 'to-clean', 'Back from a strip, as counted.'),
  clean: hint(inHand, inHand, 'to-clean', 'ready', 'Cleaned where they lie.'),
  repair: hint(['repair', 'yard'], ['yard', 'rack'], 'to-repair', 'ready', 'Repaired and back.'),
  quarantine: hint(inHand, inHand, 'ready', 'quarantine', 'Set apart until somebody decides.'),
  scrap: hint(inHand, ['scrap'], 'to-repair', 'scrapped', 'Beyond repair.'),
  lost: hint(inHand, ['lost'], 'ready', 'ready', 'Not found where they should be.'),
  found: hint(['lost'], ['yard', 'rack', 'site'], 'ready', 'ready', 'Lost pieces that turned up.'),
  opening: hint(['opening'], ['yard', 'rack', 'site'], 'ready', 'ready', 'The first figure of a place.'),
  'owner-swap': hint(inHand, inHand, 'ready', 'ready', 'A piece of one owner stands for another’s.'),
};

function hint(
  from: readonly PlaceKind[],
  to: readonly PlaceKind[],
  condition: Condition,
  conditionAfter: Condition,
  words: string,
): ReasonHint {
  return { from, to, condition, conditionAfter, words };
}

export interface NamedPlace {
  readonly code: string;
  readonly kind: PlaceKind;
}

/** Places of the kinds in hint order first, then all others: nothing is kept from being chosen. */
export function placesFirst<P extends NamedPlace>(places: readonly P[], kinds: readonly PlaceKind[]): P[] {
  const rank = (place: P): number => {
    const at = kinds.indexOf(place.kind);
    return at < 0 ? kinds.length : at;
  };
  return [...places].sort((one, other) => rank(one) - rank(other));
}

/** The place a slip begins with: the only fitting one or the first of them; none where nothing fits. */
export function firstPlace(places: readonly NamedPlace[], kinds: readonly PlaceKind[]): string {
  const first = placesFirst(places, kinds)[0];
  return first !== undefined && kinds.includes(first.kind) ? first.code : '';
}
