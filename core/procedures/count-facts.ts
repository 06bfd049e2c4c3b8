// What a count is judged by, gathered from the book: what was entered, what was booked at each moment of an entry,
// classes, look-alikes, what is on the road.
import { type Answer, answer } from '../answer.ts';
import type { BookComponent, BookReader } from '../book/book.ts';
import { classify, type Classed } from '../yard/count-class.ts';
import { countDifferences, type CountDifference } from '../yard/count-differences.ts';
import { partnersOf } from '../yard/look-alikes.ts';
import { isHeld, type Location, type Owner } from '../yard/movement.ts';
import { momentMs } from '../yard/moment.ts';
import type { YardNote } from '../yard/note.ts';
import type { StockLine } from '../yard/quantities.ts';
import type { CountEntry, LookAlike, StockCount } from '../yard/stock-count.ts';
import { withoutMovements } from '../yard/without-movements.ts';
import { byCode } from './by-code.ts';
import { findCount } from './find-count.ts';

export interface CountFacts {
  readonly count: StockCount;
  readonly entries: readonly CountEntry[];
  readonly differences: readonly CountDifference[];
  readonly stockAt: (at: string) => readonly StockLine[];
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
  readonly components: ReadonlyMap<string, BookComponent>;
  readonly classed: readonly Classed[];
  readonly pairs: readonly LookAlike[];
  readonly partners: ReadonlyMap<string, readonly string[]>;
  readonly drafts: readonly YardNote[];
}

/** A count has at most 2,000 lines; each becomes a few movements. */
const mostMovements = 50_000;

export async function readCountFacts(book: BookReader, asked: string): Promise<Answer<CountFacts>> {
  const found = await findCount(book, asked);
  if (!found.ok) return found;
  const count = found.value;
  const { id } = count;
  const entries = await book.countEntries(id);
  const [locations, owners, components, settings, pairs, drafts] = await Promise.all([
    book.locations(),
    book.owners(),
    book.components(),
    book.yardSettings(),
    book.lookAlikes(),
    book.notes({ state: 'draft' }),
  ]);
  // What the count booked itself is left out: it is told against what was booked before it.
  const own = count.state === 'booked' ? await book.movements({ paper: id, limit: mostMovements }) : [];
  const moments = new Map<string, readonly StockLine[]>();
  for (const at of new Set([count.startedAt, ...entries.map((entry) => entry.at)])) {
    const upTo = momentMs(at) ?? 0;
    const ownByThen = own.filter((movement) => (momentMs(movement.at) ?? 0) <= upTo);
    moments.set(at, withoutMovements(await book.stock(at), ownByThen));
  }
  const stockAt = (at: string): readonly StockLine[] => {
    const stock = moments.get(at);
    if (stock === undefined) throw new Error(`The stock of ${at} was not gathered.`);
    return stock;
  };
  const classed = classesOf(stockAt(count.startedAt), components, locations, owners, settings.classes);
  const classes = new Map(classed.map((each) => [each.component, each.class]));
  const ofCode = byCode(components);
  const kinds = new Map(locations.map(({ code, kind }) => [code, kind]));
  const differences = countDifferences({
    count,
    entries,
    stockAt,
    locations: kinds,
    owners: new Map(owners.map(({ code, kind }) => [code, kind])),
    classes,
    valueCents: (component) => ofCode.get(component)?.valueCents ?? null,
    onTheRoad: (component) => onTheRoad(drafts, component, (place) => isHeld(kinds.get(place) ?? 'supplier')),
  });
  const partners = partnersOf(pairs);
  return answer({
    count,
    entries,
    differences,
    stockAt,
    locations,
    owners,
    components: ofCode,
    classed,
    pairs,
    partners,
    drafts,
  });
}

/** The classes by what is held: of every owner whose pieces we answer for. */
export function classesOf(
  stock: readonly StockLine[],
  components: readonly BookComponent[],
  locations: readonly Location[],
  owners: readonly Owner[],
  byHand: Parameters<typeof classify>[1],
): readonly Classed[] {
  const held = heldOf(stock, locations, owners);
  return classify(
    components.map(({ code, valueCents, hirePerDayCents }) => ({
      component: code,
      held: held.get(code) ?? 0,
      valueCents: valueCents ?? null,
      hirePerDayCents,
    })),
    byHand,
  );
}

export function heldOf(
  stock: readonly StockLine[],
  locations: readonly Location[],
  owners: readonly Owner[],
): ReadonlyMap<string, number> {
  const kinds = new Map(locations.map(({ code, kind }) => [code, kind]));
  const others = new Set(owners.filter(({ kind }) => kind === 'others').map(({ code }) => code));
  const held = new Map<string, number>();
  for (const { component, owner, location, quantity } of stock) {
    const kind = kinds.get(location);
    if (kind === undefined || !isHeld(kind) || others.has(owner)) continue;
    held.set(component, (held.get(component) ?? 0) + quantity);
  }
  return held;
}

/** Loaded and gone by a note that nobody has booked: still booked where it came from. */
function onTheRoad(
  drafts: readonly YardNote[],
  component: string,
  isHeldPlace: (place: string) => boolean,
): number {
  return drafts
    .filter((note) => note.leftAt !== null && note.arrivedAt === null && isHeldPlace(note.from))
    .flatMap((note) => note.lines)
    .filter((line) => line.component === component)
    .reduce((sum, line) => sum + (line.counted ?? line.sent), 0);
}
