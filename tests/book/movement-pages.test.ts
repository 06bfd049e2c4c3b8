// Pages of the ledger and histories of a number, against lists made by looking at every movement: whichever filters
// come together, the same entries in the same order, and page after page all of them.
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { BookedMovement, HistoryFilter, HistoryRow, MovementFilter } from '../../core/book/book.ts';
import type { OpenBook } from '../../core/book/open.ts';
import { conditions, reasons } from '../../core/yard/movement.ts';
import { aFolder, aYard, done, movement, now, opened, openingFigure, run } from './a-book.ts';
import { dice, someSeed } from './dice.ts';
import type { Dice } from './dice.ts';
import { components, heldPlaces, owners, placeKinds, putRandomYard, RandomLedger } from './random-ledger.ts';

async function aLedger(throws: Dice): Promise<{ book: OpenBook; all: readonly BookedMovement[] }> {
  const book = await opened(path.join(aFolder(), 'a.regang'));
  await done(book, putRandomYard);
  const ledger = new RandomLedger(throws);
  while (ledger.booked.length < 1200) {
    const paper = throws.chance(50) ? `paper-${throws.below(40)}` : null;
    const list = ledger.next(1 + throws.below(20)).map((each) => ({ ...each, paper }));
    const answered = await run(book, async (writer) => {
      await writer.appendMovements(list, now);
      return { ok: true, value: null };
    });
    if (answered.ok) ledger.keep(list);
    else ledger.drop(list);
  }
  const all = await book.read((reader) => reader.movements({ limit: 1_000_000 }));
  expect(all.map((each) => each.id).reverse()).toEqual(ledger.booked.map((each) => each.id));
  return { book, all };
}

function meets(each: BookedMovement, filter: Omit<MovementFilter, 'limit'>): boolean {
  return (
    (filter.component ?? each.component) === each.component &&
    (filter.owner ?? each.owner) === each.owner &&
    (filter.paper ?? each.paper) === each.paper &&
    (filter.reason ?? each.reason) === each.reason &&
    [each.from, each.to].includes(filter.location ?? each.from) &&
    [each.condition, each.conditionAfter].includes(filter.condition ?? each.condition)
  );
}

function someFilter(throws: Dice): Omit<MovementFilter, 'limit'> {
  const percent = throws.of([15, 30, 60]);
  return {
    ...(throws.chance(percent) ? { component: throws.of(components) } : {}),
    ...(throws.chance(percent) ? { owner: throws.of(Object.keys(owners)) } : {}),
    ...(throws.chance(percent) ? { location: throws.of(Object.keys(placeKinds)) } : {}),
    ...(throws.chance(percent) ? { condition: throws.of(conditions) } : {}),
    ...(throws.chance(percent) ? { reason: throws.of(reasons) } : {}),
    ...(throws.chance(percent / 3) ? { paper: `paper-${throws.below(40)}` } : {}),
  };
}

describe('Of a random ledger of 1,200 movements', () => {
  test('300 filters give what looking at every movement gives, in pages of any length', async () => {
    const throws = dice(someSeed());
    const { book, all } = await aLedger(throws);
    let met = 0;
    for (let count = 0; count < 300; count += 1) {
      const filter = someFilter(throws);
      const limit = throws.of([1, 7, 200, 2000]);
      const wanted = all.filter((each) => meets(each, filter));
      const first = await book.read((reader) => reader.movements({ ...filter, limit }));
      const beforeNumber = first.at(-1)?.number;
      const context = `SEED=${throws.seed}, ${JSON.stringify({ ...filter, limit })}`;
      expect(first, context).toEqual(wanted.slice(0, limit));
      const second = await book.read((reader) => reader.movements({ ...filter, limit, beforeNumber }));
      if (beforeNumber !== undefined) expect(second, context).toEqual(wanted.slice(limit, 2 * limit));
      met += first.length > 0 ? 1 : 0;
    }
    // Filters that never leave anything would have tested nothing.
    expect(met).toBeGreaterThan(80);
  });

  test('80 histories carry the quantity after every entry, in order of time, page after page', async () => {
    const throws = dice(someSeed());
    const { book, all } = await aLedger(throws);
    let entries = 0;
    for (let count = 0; count < 80; count += 1) {
      const filter = {
        component: throws.of(components),
        ...(throws.chance(60) ? { owner: throws.of(Object.keys(owners)) } : {}),
        ...(throws.chance(60) ? { location: throws.of(Object.keys(placeKinds)) } : {}),
        ...(throws.chance(60) ? { condition: throws.of(conditions) } : {}),
      };
      const wanted = historyByHand(all, filter);
      const found: HistoryRow[] = [];
      const limit = throws.of([3, 40, 500]);
      for (let page: readonly HistoryRow[] = []; ;) {
        const beforeNumber = page.at(-1)?.number;
        page = await book.read((reader) => reader.history({ ...filter, limit, beforeNumber }));
        found.push(...page);
        if (page.length < limit) break;
      }
      const facts = found.map(({ number, change, quantityAfter }) => ({ number, change, quantityAfter }));
      expect(facts, `SEED=${throws.seed}, ${JSON.stringify(filter)}`).toEqual(wanted);
      entries += facts.length;
    }
    expect(entries).toBeGreaterThan(1000);
  });
});

function historyByHand(all: readonly BookedMovement[], filter: Omit<HistoryFilter, 'limit'>) {
  const places = filter.location === undefined ? heldPlaces : [filter.location];
  const isIn = (place: string, condition: string): boolean =>
    places.includes(place) && (filter.condition ?? condition) === condition;
  let quantity = 0;
  return all
    .filter((each) => each.component === filter.component && each.owner === (filter.owner ?? each.owner))
    .filter((each) => isIn(each.from, each.condition) || isIn(each.to, each.conditionAfter))
    .sort((one, other) => Date.parse(one.at) - Date.parse(other.at) || one.number - other.number)
    .map((each) => {
      const change =
        (isIn(each.to, each.conditionAfter) ? each.quantity : 0) -
        (isIn(each.from, each.condition) ? each.quantity : 0);
      quantity += change;
      return { number: each.number, change, quantityAfter: quantity };
    })
    .reverse();
}

test('A clock set back: what is recorded earlier than the last is taken, keeps its place in the ledger, and the levels hold', async () => {
  const book = await aYard(path.join(aFolder(), 'a.regang'));
  const inMarch = { at: '2026-03-01T07:00:00-05:00' };
  await done(book, (writer) =>
    writer.appendMovements([openingFigure({ ...inMarch, id: 'first' })], '2026-03-02T07:00:00-05:00'),
  );
  // Recorded in 2019 by a machine whose battery was empty; the day it speaks of is still right.
  const setBack = '2019-01-01T00:00:03-05:00';
  await done(book, (writer) =>
    writer.appendMovements(
      [movement({ id: 'second', quantity: 4, at: '2026-03-02T12:00:00-05:00' })],
      setBack,
    ),
  );
  // One that also says it happened in 2019 would take what was not there yet.
  const tooEarly = await run(book, async (writer) => {
    await writer.appendMovements([movement({ quantity: 1, at: setBack })], setBack);
    return { ok: true, value: null };
  });
  expect(tooEarly).toMatchObject({ ok: false, error: { code: 'not-enough' } });
  await done(book, (writer) =>
    writer.appendMovements(
      [movement({ id: 'third', from: 'HIRE', to: 'NORTH', at: setBack, reason: 'delivery' })],
      setBack,
    ),
  );
  const found = await book.read(async (reader) => ({
    order: (await reader.movements({ limit: 9 })).map((each) => each.id),
    problems: await reader.check(),
    before: (await reader.stock('2026-02-01T00:00:00Z')).filter((line) => line.location === 'NORTH'),
    stock: (await reader.stock()).filter((line) => line.location === 'NORTH'),
  }));
  expect(found.order).toEqual(['third', 'second', 'first']);
  expect(found.problems).toEqual([]);
  expect(found.before.map((line) => line.quantity)).toEqual([10]);
  expect(found.stock.map((line) => line.quantity)).toEqual([16]);
});
