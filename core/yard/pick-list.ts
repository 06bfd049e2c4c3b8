// A pick list: what to take from which place for a gang, a pour or an order, place after place as one walks, the
// heaviest pieces of a place first; and what is short, with what of it lies elsewhere or is not ready. Nothing is put
// in place of anything: what is short stays short until somebody enters what was given instead.
import { isLoose, isReady, type Location, type Owner } from './movement.ts';
import type { StockLine } from './quantities.ts';
import { takeFrom, takingOrder, type Wanted } from './take-from.ts';

export interface PickFacts {
  readonly stock: readonly StockLine[];
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
  readonly weightGrams: ReadonlyMap<string, number>;
  /** Take from this place alone; from every yard, rack, site and container if absent. */
  readonly from?: string | undefined;
}

export interface PickLine {
  readonly component: string;
  readonly owner: string;
  readonly condition: StockLine['condition'];
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
  readonly condition: StockLine['condition'];
  readonly quantity: number;
}

export interface PickShort {
  readonly component: string;
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

export function pickList(wanted: readonly Wanted[], facts: PickFacts): PickList {
  const order = takingOrder(facts.owners);
  const places = new Set(facts.locations.filter(({ kind }) => isLoose(kind)).map(({ code }) => code));
  const usable = facts.stock.filter(
    (line) =>
      line.quantity > 0 &&
      isReady(line.condition) &&
      !order.notOf.includes(line.owner) &&
      (facts.from === undefined ? places.has(line.location) : line.location === facts.from),
  );
  const short: PickShort[] = [];
  const byPlace = new Map<string, PickLine[]>();
  for (const { component, quantity } of together(wanted)) {
    const of = usable.filter((line) => line.component === component);
    const there = of.reduce((sum, line) => sum + line.quantity, 0);
    if (there < quantity)
      short.push({
        component,
        wanted: quantity,
        there,
        missing: quantity - there,
        elsewhere: elsewhere(component, of, facts),
      });
    const taken = takeFrom(of, { component, quantity: Math.min(quantity, there) }, order);
    if (!taken.ok) throw new Error(taken.error.message);
    for (const { location, ...line } of taken.value) {
      const weightGrams = (facts.weightGrams.get(component) ?? 0) * line.quantity;
      byPlace.set(location, [...(byPlace.get(location) ?? []), { component, ...line, weightGrams }]);
    }
  }
  const sorted = [...byPlace].sort(([one], [other]) => asWalked(one, other)).map(placeOf);
  const lines = sorted.flatMap((place) => place.lines);
  return {
    places: sorted,
    short,
    pieces: lines.reduce((sum, line) => sum + line.quantity, 0),
    weightGrams: lines.reduce((sum, line) => sum + line.weightGrams, 0),
  };
}

/** Racks are walked by their codes, numbers in their order: R2 before R10. */
export function asWalked(one: string, other: string): number {
  return one.localeCompare(other, 'en', { numeric: true }) || (one < other ? -1 : Number(one > other));
}

function placeOf([location, lines]: readonly [string, PickLine[]]): PickPlace {
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

/** A component once, however often it is wanted. */
export function together(wanted: readonly Wanted[]): Wanted[] {
  const sums = new Map<string, number>();
  for (const { component, quantity } of wanted) sums.set(component, (sums.get(component) ?? 0) + quantity);
  return [...sums].map(([component, quantity]) => ({ component, quantity }));
}

function elsewhere(component: string, taken: readonly StockLine[], facts: PickFacts): HeldElsewhere[] {
  const kinds = new Map(facts.locations.map(({ code, kind }) => [code, kind]));
  const isHere = (line: StockLine): boolean => {
    const kind = kinds.get(line.location);
    return kind !== undefined && (isLoose(kind) || kind === 'repair' || kind === 'other-job');
  };
  return facts.stock
    .filter((line) => line.component === component && line.quantity > 0 && !taken.includes(line))
    .filter((line) => isHere(line) && line.condition !== 'scrapped')
    .map(({ location, owner, condition, quantity }) => ({ location, owner, condition, quantity }))
    .sort((one, other) => asWalked(one.location, other.location) || asWalked(one.owner, other.owner));
}
