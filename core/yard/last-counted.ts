// When each quantity was last looked at: the newest booked count of its place, or the opening figure that it began
// with, with how the figure was got. A plan that rests on old or estimated figures says so from this.
import type { Basis } from './movement.ts';
import { type LineBasis, type StockLine, weakerBasis } from './quantities.ts';
import { countName, type StockCount } from './stock-count.ts';

export interface LastCounted {
  readonly component: string;
  readonly owner: string;
  readonly location: string;
  /** Null where the pieces came here by movements alone and nobody has counted them since. */
  readonly basis: Basis | null;
  /** YYYY-MM-DD, by the clock of whoever counted. */
  readonly date: string | null;
  /** The count as it is printed, N-3; null where it rests on an opening figure or on nothing. */
  readonly count: string | null;
}

type Place = Pick<StockLine, 'component' | 'owner' | 'location'>;

/**
 * One answer a component, owner and location among the lines of stock, in their order. A count of every owner
 * together speaks for each of them; one whose figure is uncertain, or whose
 * difference was left open, is an estimate.
 */
export function lastCounted(
  stock: readonly (Place & LineBasis)[],
  counts: readonly Pick<StockCount, 'number' | 'result'>[],
): readonly LastCounted[] {
  const newest = newestCounts(counts);
  const openings = new Map<string, Place & LineBasis>();
  for (const line of stock) {
    const key = keyOf(line.location, line.component, line.owner);
    const known = openings.get(key);
    openings.set(key, known === undefined ? line : { ...line, ...weakerBasis(known, line) });
  }
  return [...openings.values()].map((line) => {
    const { component, owner, location } = line;
    const named = newest.get(keyOf(location, component, owner));
    const together = newest.get(keyOf(location, component, null));
    const found = later(named, together);
    const opening = { basis: line.basis, date: line.basisDate, count: null };
    // A count of an earlier day than the opening figure's says less than that figure.
    const isOlder = found !== undefined && line.basisDate !== null && found.date < line.basisDate;
    return { component, owner, location, ...(found === undefined || isOlder ? opening : found.told) };
  });
}

interface Newest {
  readonly at: number;
  readonly date: string;
  readonly told: Pick<LastCounted, 'basis' | 'date' | 'count'>;
}

function newestCounts(counts: readonly Pick<StockCount, 'number' | 'result'>[]): Map<string, Newest> {
  const newest = new Map<string, Newest>();
  for (const { number, result } of counts)
    for (const line of result?.lines ?? []) {
      const key = keyOf(line.location, line.component, line.owner);
      const date = line.countedAt.slice(0, 10);
      const isSure = line.uncertainty === 0 && line.leftOpen === 0;
      const basis: Basis = isSure ? 'counted' : 'estimated';
      const one = { at: number, date, told: { basis, date, count: countName({ number }) } };
      const found = later(newest.get(key), one);
      if (found !== undefined) newest.set(key, found);
    }
  return newest;
}

function later(one: Newest | undefined, other: Newest | undefined): Newest | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  if (one.date !== other.date) return one.date > other.date ? one : other;
  return one.at > other.at ? one : other;
}

function keyOf(location: string, component: string, owner: string | null): string {
  return JSON.stringify([location, component, owner]);
}
