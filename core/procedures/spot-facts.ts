// What a spot check is chosen by, gathered from the book.
import type { BookReader } from '../book/book.ts';
import type { SpotFacts } from '../yard/count-lines.ts';
import { lastCounted } from '../yard/last-counted.ts';
import { partnersOf } from '../yard/look-alikes.ts';
import { momentMs } from '../yard/moment.ts';
import { Temporal } from 'temporal-polyfill';
import { classesOf } from './count-facts.ts';

/** Movements looked at to see what moved since it was last counted: the newest so many of the book. */
const looked = 20_000;

export async function readSpotFacts(
  book: BookReader,
  now: string,
  only: readonly string[] | undefined,
): Promise<SpotFacts & { readonly lines: number }> {
  const [stock, locations, owners, components, settings, counts, pairs, movements] = await Promise.all([
    book.stock(now),
    book.locations(),
    book.owners(),
    book.components(),
    book.yardSettings(),
    book.counts({ state: 'booked' }),
    book.lookAlikes(),
    book.movements({ limit: looked }),
  ]);
  const places = only === undefined ? stock : stock.filter(({ location }) => only.includes(location));
  const counted = lastCounted(places, counts);
  const since = new Map<string, number>();
  for (const { location, component, date } of counted)
    if (date !== null) since.set(key(location, component), momentMs(`${date}T23:59:59Z`) ?? 0);
  const moved = new Map<string, number>();
  const upTo = momentMs(now) ?? 0;
  for (const { component, from, to, at, reason } of movements) {
    const ms = momentMs(at) ?? 0;
    if (reason === 'opening' || ms > upTo) continue;
    for (const location of new Set([from, to]))
      if (ms > (since.get(key(location, component)) ?? -Infinity))
        moved.set(key(location, component), (moved.get(key(location, component)) ?? 0) + 1);
  }
  const classed = classesOf(stock, components, locations, owners, settings.classes);
  return {
    stock: places,
    kinds: new Map(locations.map(({ code, kind }) => [code, kind])),
    lastCounted: counted,
    classes: new Map(classed.map((each) => [each.component, each.class])),
    movedSince: (location, component) => moved.get(key(location, component)) ?? 0,
    partners: partnersOf(pairs),
    oldBefore: daysBefore(now, settings.figureOldAfterDays),
    lines: settings.spotCheckLines,
  };
}

function daysBefore(now: string, days: number): string {
  return Temporal.PlainDate.from(now.slice(0, 10)).subtract({ days }).toString();
}

function key(location: string, component: string): string {
  return JSON.stringify([location, component]);
}
