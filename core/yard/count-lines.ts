// Which lines a count takes: everything booked at its places, or the few that a spot check looks at. The choice is
// the same every time: what was never counted, is worth most, has moved and looks like something else comes first.
// What each reason weighs is common practice, no source.
import type { LastCounted } from './last-counted.ts';
import { isLoose, type LocationKind } from './movement.ts';
import type { StockLine } from './quantities.ts';
import type { CountClass, CountLine } from './stock-count.ts';

/** Why a line is worth looking at. */
export type LineReason =
  | { readonly why: 'never-counted' }
  | { readonly why: 'estimated' }
  | { readonly why: 'from-a-list' }
  | { readonly why: 'old'; readonly date: string }
  | { readonly why: 'class'; readonly class: CountClass }
  | { readonly why: 'moved'; readonly movements: number }
  | { readonly why: 'look-alike'; readonly other: string };

export interface ChosenLine extends CountLine {
  readonly booked: number;
  readonly lastCountedOn: string | null;
  readonly reasons: readonly LineReason[];
}

export interface SpotFacts {
  readonly stock: readonly StockLine[];
  readonly kinds: ReadonlyMap<string, LocationKind>;
  readonly lastCounted: readonly LastCounted[];
  readonly classes: ReadonlyMap<string, CountClass>;
  /** Movements at the place since it was last counted. */
  readonly movedSince: (location: string, component: string) => number;
  readonly partners: ReadonlyMap<string, readonly string[]>;
  /** A figure from before this day is old, YYYY-MM-DD. */
  readonly oldBefore: string;
}

/** Everything that is booked at the places, of all owners together or each by itself; in shelf order. */
export function locationLines(
  stock: readonly StockLine[],
  locations: readonly string[],
  byOwner: boolean,
): readonly CountLine[] {
  const lines = new Map<string, CountLine>();
  for (const { location, component, owner, quantity } of stock) {
    if (quantity <= 0 || !locations.includes(location)) continue;
    const line = { location, component, owner: byOwner ? owner : null };
    lines.set(JSON.stringify([location, component, line.owner]), line);
  }
  return [...lines.values()].sort(inShelfOrder);
}

/** By place, then by component, then by owner: the order in which a yard is walked. */
export function inShelfOrder(one: CountLine, other: CountLine): number {
  return (
    compare(one.location, other.location) ||
    compare(one.component, other.component) ||
    compare(one.owner ?? '', other.owner ?? '')
  );
}

function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

/**
 * The lines of a spot check in shelf order, with the reasons why they were chosen. A look-alike that lies at the same
 * place is counted along with the one it is taken for, where there is room.
 */
export function spotLines(facts: SpotFacts, count: number): readonly ChosenLine[] {
  const candidates = candidatesOf(facts).sort(
    (one, other) =>
      weight(other) - weight(one) ||
      compare(one.lastCountedOn ?? '', other.lastCountedOn ?? '') ||
      inShelfOrder(one, other),
  );
  const chosen = new Set<ChosenLine>();
  for (const line of candidates) {
    if (chosen.size >= count) break;
    chosen.add(line);
    const partners = facts.partners.get(line.component) ?? [];
    const beside = candidates.filter(
      (each) => each.location === line.location && partners.includes(each.component),
    );
    for (const each of beside) if (chosen.size < count) chosen.add(each);
  }
  return [...chosen].sort(inShelfOrder);
}

function candidatesOf(facts: SpotFacts): ChosenLine[] {
  const places = facts.stock.filter(({ location }) => {
    const kind = facts.kinds.get(location);
    return kind !== undefined && isLoose(kind);
  });
  const here = (location: string, component: string): boolean =>
    places.some((each) => each.location === location && each.component === component && each.quantity > 0);
  return locationLines(places, [...new Set(places.map((each) => each.location))], false).map((line) => {
    const { location, component } = line;
    const figures = facts.lastCounted.filter(
      (each) => each.location === location && each.component === component,
    );
    const dates = figures.flatMap(({ date }) => date ?? []).sort(compare);
    const lastCountedOn = dates.length < figures.length ? null : (dates[0] ?? null);
    const booked = places
      .filter((each) => each.location === location && each.component === component)
      .reduce((sum, { quantity }) => sum + quantity, 0);
    const partner = facts.partners.get(component)?.find((other) => here(location, other));
    const moved = facts.movedSince(location, component);
    const reasons: LineReason[] = [
      ...figureReasons(figures, lastCountedOn, facts.oldBefore),
      { why: 'class', class: facts.classes.get(component) ?? 'C' },
      ...(moved === 0 ? [] : [{ why: 'moved', movements: moved } as const]),
      ...(partner === undefined ? [] : [{ why: 'look-alike', other: partner } as const]),
    ];
    return { ...line, booked, lastCountedOn, reasons };
  });
}

function figureReasons(
  figures: readonly LastCounted[],
  lastCountedOn: string | null,
  oldBefore: string,
): readonly LineReason[] {
  const bases = figures.map(({ basis }) => basis);
  return [
    ...(lastCountedOn === null ? [{ why: 'never-counted' } as const] : []),
    ...(bases.includes('estimated') ? [{ why: 'estimated' } as const] : []),
    ...(bases.includes('taken-from-list') ? [{ why: 'from-a-list' } as const] : []),
    ...(lastCountedOn !== null && lastCountedOn < oldBefore
      ? [{ why: 'old', date: lastCountedOn } as const]
      : []),
  ];
}

const weights = {
  'never-counted': 4,
  estimated: 4,
  'from-a-list': 4,
  old: 2,
  moved: 2,
  'look-alike': 2,
} as const;
const classWeights: Readonly<Record<CountClass, number>> = { A: 3, B: 1, C: 0 };

function weight({ reasons }: ChosenLine): number {
  return reasons.reduce(
    (sum, reason) => sum + (reason.why === 'class' ? classWeights[reason.class] : weights[reason.why]),
    0,
  );
}
