// No location that holds pieces ever has less than nothing, at any moment: a movement booked for last week
// must not take what was needed for one booked since. All movements of one moment count together.
import type { Refusal } from '../answer.ts';
import type { BookedChange, LedgerView } from './check-movements.ts';
import { momentMs } from './moment.ts';
import { holdsPieces, type Movement } from './movement.ts';
import { stockKey } from './quantities.ts';

interface Change {
  readonly ms: number;
  readonly at: string;
  readonly by: number;
  /** Pieces that a new movement takes away. */
  readonly taken: number;
}

interface Place {
  readonly movement: Movement;
  readonly index: number;
  readonly location: string;
  readonly condition: string;
  readonly mayNotBeBelowZero: boolean;
  quantity: number;
  readonly changes: Change[];
}

/** The first new movement that takes more than there is, or that brings more than can be counted. */
export function checkEnough(
  movements: readonly Movement[],
  view: LedgerView,
): { readonly refusal: Refusal; readonly index: number } | null {
  const places = placesOf(movements, view);
  for (const line of view.before) {
    const place = places.get(stockKey(line.component, line.owner, line.location, line.condition));
    if (place !== undefined) place.quantity = line.quantity;
  }
  for (const movement of view.since) addChanges(places, movement, false);
  for (const movement of movements) addChanges(places, movement, true);
  for (const place of places.values()) {
    const refusal = followed(place);
    if (refusal !== null) return { refusal, index: place.index };
  }
  return null;
}

function placesOf(movements: readonly Movement[], view: LedgerView): Map<string, Place> {
  const places = new Map<string, Place>();
  const add = (movement: Movement, index: number, end: 'from' | 'to'): void => {
    const location = movement[end];
    const condition = end === 'from' ? movement.condition : movement.conditionAfter;
    const key = stockKey(movement.component, movement.owner, location, condition);
    if (places.has(key)) return;
    const kind = view.locations.get(location);
    const mayNotBeBelowZero = kind !== undefined && holdsPieces(kind);
    places.set(key, { movement, index, location, condition, mayNotBeBelowZero, quantity: 0, changes: [] });
  };
  // Places that are taken from come first, so that a refusal names the movement that takes.
  for (const [index, movement] of movements.entries()) add(movement, index, 'from');
  for (const [index, movement] of movements.entries()) add(movement, index, 'to');
  return places;
}

function addChanges(places: ReadonlyMap<string, Place>, movement: BookedChange, isNew: boolean): void {
  const { component, owner, quantity, at } = movement;
  const ms = momentMs(at);
  if (ms === null) throw new Error(`Movement ${movement.id} has no moment: "${at}".`);
  const from = places.get(stockKey(component, owner, movement.from, movement.condition));
  from?.changes.push({ ms, at, by: -quantity, taken: isNew ? quantity : 0 });
  const to = places.get(stockKey(component, owner, movement.to, movement.conditionAfter));
  to?.changes.push({ ms, at, by: quantity, taken: 0 });
}

function followed(place: Place): Refusal | null {
  const changes = place.changes.sort((one, other) => one.ms - other.ms);
  let taken = 0;
  for (const [index, change] of changes.entries()) {
    place.quantity += change.by;
    taken += change.taken;
    if (changes[index + 1]?.ms === change.ms) continue;
    if (Math.abs(place.quantity) > Number.MAX_SAFE_INTEGER) return tooMany(place);
    if (place.mayNotBeBelowZero && place.quantity < 0 && taken > 0) return notEnough(place, change.at, taken);
  }
  return null;
}

function notEnough(place: Place, at: string, taken: number): Refusal {
  const { component, owner } = place.movement;
  const there = place.quantity + taken;
  const isLater = momentMs(at) !== momentMs(place.movement.at);
  return {
    code: 'not-enough',
    message:
      `${place.location} has ${there} of ${component} (${owner}, ${place.condition}) at ${at}; ` +
      `${taken} cannot be taken from it.`,
    field: 'quantity',
    hint: isLater
      ? 'Maybe other movements, booked for later than this one, need the same pieces.'
      : 'Maybe they lie at another location, in another condition, or belong to another owner.',
  };
}

function tooMany(place: Place): Refusal {
  return {
    code: 'too-many',
    message: `The sum of ${place.movement.component} at ${place.location} would be more than can be counted exactly.`,
    field: 'quantity',
  };
}
