// A pick list: what to take from which place for a gang, a pour or an order, place after place as one walks, the
// heaviest pieces of a place first; and what is short, with what of it lies elsewhere or is not ready. Nothing is put
// in place of anything: what is short stays short until somebody enters what was given instead.
import { type Condition, isLoose, isReady, type Location, type Owner } from './movement.ts';
import type { StockLine } from './quantities.ts';
import { takeFrom, takingOrder, type Wanted } from './take-from.ts';

export interface WantedPieces extends Wanted {
  /** Of this owner alone: what goes back to a supplier is his. */
  readonly owner?: string | undefined;
  /** In this condition alone; any that is ready if absent. */
  readonly condition?: Condition | undefined;
}

export interface PickFacts {
  readonly stock: readonly StockLine[];
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
  readonly weightGrams: ReadonlyMap<string, number>;
  /** Take from these places alone; from every yard, rack, site and container if absent. */
  readonly from?: readonly string[] | undefined;
}

export interface PickLine {
  readonly component: string;
  readonly owner: string;
  readonly condition: Condition;
  readonly quantity: number;
  readonly weightGrams: number;
}

export interface PickPlace {
  readonly location: string;
  readonly lines: readonly PickLine[];
  readonly weightGrams: number;
}

/** Pieces of a component that are held but not taken: where, whose, in what condition. */
export interface HeldElsewhere {
  readonly location: string;
  readonly owner: string;
  readonly condition: Condition;
  readonly quantity: number;
}

export interface PickShort {
  readonly component: string;
  /** Null where any owner's would do. */
  readonly owner: string | null;
  readonly wanted: number;
  readonly there: number;
  readonly missing: number;
  readonly elsewhere: readonly HeldElsewhere[];
}

export interface PickList {
  readonly places: readonly PickPlace[];
  readonly short: readonly PickShort[];
  readonly pieces: number;
  readonly weightGrams: number;
}

export function pickList(wanted: readonly WantedPieces[], facts: PickFacts): PickList {
  const order = takingOrder(facts.owners);
  const loose = new Set(facts.locations.filter(({ kind }) => isLoose(kind)).map(({ code }) => code));
  const mayTakeAt = (location: string): boolean => facts.from?.includes(location) ?? loose.has(location);
  let left = facts.stock.filter((line) => line.quantity > 0);
  const short: PickShort[] = [];
  const byPlace = new Map<string, PickLine[]>();
  for (const want of together(wanted)) {
    const { component, quantity } = want;
    const of = left.filter(
      (line) => line.component === component && mayTakeAt(line.location) && serves(line, want, order.notOf),
    );
    const there = of.reduce((sum, line) => sum + line.quantity, 0);
    const taken = takeFrom(
      of,
      { component, quantity: Math.min(quantity, there) },
      want.condition === undefined ? order : { owners: order.owners, conditions: [want.condition] },
    );
    if (!taken.ok) throw new Error(taken.error.message);
    for (const { location, ...line } of taken.value) {
      const weightGrams = (facts.weightGrams.get(component) ?? 0) * line.quantity;
      byPlace.set(location, [...(byPlace.get(location) ?? []), { component, ...line, weightGrams }]);
    }
    left = left.flatMap((line) => without(line, component, taken.value));
    if (there >= quantity) continue;
    const owner = want.owner ?? null;
    const elsewhere = heldElsewhere(component, left, facts);
    short.push({ component, owner, wanted: quantity, there, missing: quantity - there, elsewhere });
  }
  const places = [...byPlace].sort(([one], [other]) => asWalked(one, other)).map(placeOf);
  const lines = places.flatMap((place) => place.lines);
  return {
    places,
    short,
    pieces: lines.reduce((sum, line) => sum + line.quantity, 0),
    weightGrams: lines.reduce((sum, line) => sum + line.weightGrams, 0),
  };
}

function serves(line: StockLine, want: WantedPieces, notOf: readonly string[]): boolean {
  const isOwners = want.owner === undefined ? !notOf.includes(line.owner) : line.owner === want.owner;
  return (
    isOwners && (want.condition === undefined ? isReady(line.condition) : line.condition === want.condition)
  );
}

function without(
  line: StockLine,
  component: string,
  taken: readonly {
    readonly location: string;
    readonly owner: string;
    readonly condition: Condition;
    readonly quantity: number;
  }[],
): StockLine[] {
  if (line.component !== component) return [line];
  const gone = taken
    .filter(
      (each) =>
        each.location === line.location && each.owner === line.owner && each.condition === line.condition,
    )
    .reduce((sum, each) => sum + each.quantity, 0);
  return line.quantity > gone ? [{ ...line, quantity: line.quantity - gone }] : [];
}

/** Racks are walked by their codes, numbers in their order: R2 before R10. */
export function asWalked(one: string, other: string): number {
  return one.localeCompare(other, 'en', { numeric: true }) || (one < other ? -1 : Number(one > other));
}

function placeOf([location, taken]: readonly [string, readonly PickLine[]]): PickPlace {
  const lines = onceEach(taken);
  const each = (line: PickLine): number => line.weightGrams / line.quantity;
  return {
    location,
    lines: lines.sort(
      (one, other) =>
        each(other) - each(one) ||
        asWalked(one.component, other.component) ||
        asWalked(one.owner, other.owner) ||
        asWalked(one.condition, other.condition),
    ),
    weightGrams: lines.reduce((sum, line) => sum + line.weightGrams, 0),
  };
}

/** Pieces that nobody at the rack could tell apart are one line. */
function onceEach(lines: readonly PickLine[]): PickLine[] {
  const sums = new Map<string, PickLine>();
  for (const line of lines) {
    const key = JSON.stringify([line.component, line.owner, line.condition]);
    const before = sums.get(key);
    sums.set(key, {
      ...line,
      quantity: line.quantity + (before?.quantity ?? 0),
      weightGrams: line.weightGrams + (before?.weightGrams ?? 0),
    });
  }
  return [...sums.values()];
}

/** The same want once; those of one owner before those that any owner's pieces would serve. */
function together(wanted: readonly WantedPieces[]): WantedPieces[] {
  const sums = new Map<string, WantedPieces>();
  for (const want of wanted) {
    const key = JSON.stringify([want.component, want.owner ?? null, want.condition ?? null]);
    sums.set(key, { ...want, quantity: (sums.get(key)?.quantity ?? 0) + want.quantity });
  }
  const isOpen = (want: WantedPieces): number =>
    Number(want.owner === undefined) + Number(want.condition === undefined);
  return [...sums.values()]
    .filter((want) => want.quantity > 0)
    .sort((one, other) => isOpen(one) - isOpen(other));
}

/** What lies loose or in repair or with another job and was not taken. */
function heldElsewhere(component: string, left: readonly StockLine[], facts: PickFacts): HeldElsewhere[] {
  const kinds = new Map(facts.locations.map(({ code, kind }) => [code, kind]));
  const isHere = (line: StockLine): boolean => {
    const kind = kinds.get(line.location);
    return kind !== undefined && (isLoose(kind) || kind === 'repair' || kind === 'other-job');
  };
  return left
    .filter((line) => line.component === component && isHere(line) && line.condition !== 'scrapped')
    .map(({ location, owner, condition, quantity }) => ({ location, owner, condition, quantity }))
    .sort((one, other) => asWalked(one.location, other.location) || asWalked(one.owner, other.owner));
}
