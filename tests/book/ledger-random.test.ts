// Random commands against a second bookkeeper who shares no code with the book: it adds everything up from
// the start, moment by moment, and says beforehand whether a list may be booked. After every sequence the
// ledger must balance by three counts: the book's own auditor in SQL, the sums of core/yard, and this one.
import path from 'node:path';
import { expect, test } from 'vitest';
import type { Condition, Movement } from '../../core/yard/movement.ts';
import { bases, reversalOf } from '../../core/yard/movement.ts';
import { stockAfter } from '../../core/yard/quantities.ts';
import type { StockLine } from '../../core/yard/quantities.ts';
import { aFolder, aYard, movement, now, openingFigure, run } from './a-book.ts';
import { dice, someSeed } from './dice.ts';
import type { Dice } from './dice.ts';

const inHand = ['NORTH', 'SOUTH', 'SITE', 'SHOP'];
const places = [...inHand, 'HIRE', 'SCRAP', 'LOST'];
const conditions: readonly Condition[] = ['ready', 'to-clean', 'to-repair'];
const greatest = 2 ** 53 - 1;

/** The second bookkeeper: every shelf at every moment, by the plainest loop there is. Can it be so? */
function canBe(ledger: readonly Movement[]): boolean {
  const moments = new Set(ledger.map((each) => Date.parse(each.at)));
  for (const moment of moments) {
    const shelves: Record<string, bigint> = {};
    for (const each of ledger) {
      if (Date.parse(each.at) > moment) continue;
      const out = [each.component, each.owner, each.from, each.condition].join('|');
      const into = [each.component, each.owner, each.to, each.conditionAfter].join('|');
      shelves[out] = (shelves[out] ?? 0n) - BigInt(each.quantity);
      shelves[into] = (shelves[into] ?? 0n) + BigInt(each.quantity);
    }
    for (const [shelf, figure] of Object.entries(shelves)) {
      if (figure < 0n && inHand.includes(shelf.split('|')[2] ?? '')) return false;
      // More than a number holds exactly.
      if (figure > BigInt(greatest) || figure < -BigInt(greatest)) return false;
    }
  }
  return true;
}

const moments = [
  '01T07:00:00-05:00',
  '02T07:00:00-05:00',
  '02T13:00:00+01:00',
  '02T12:30:00Z',
  '09T23:59:59.999-05:00',
];

/** Mostly near what is there: 0, 1, all, one less, one more; now and then the limits of a number. */
function quantity(throws: Dice, there: number): number {
  return throws.of([
    1,
    1,
    2,
    there - 1,
    there,
    there,
    there + 1,
    0,
    throws.chance(15) ? throws.of([greatest, 2 ** 53]) : 3,
  ]);
}

function randomMovement(throws: Dice, ledger: readonly Movement[]): Movement {
  const component = throws.of(['P1', 'P2']);
  const owner = throws.of(['OURS', 'H1']);
  const at = `2026-03-${throws.of(moments)}`;
  const booked = ledger.length > 0 && throws.chance(15) ? throws.of(ledger) : null;
  if (booked !== null)
    return reversalOf(booked, {
      id: movement().id,
      at: throws.chance(50) ? booked.at : at,
      who: 'tester',
      remark: null,
    });
  if (throws.chance(15))
    return openingFigure({
      component,
      owner,
      at,
      quantity: throws.of([1, 5, 40]),
      basis: throws.of(bases),
      basisDate: throws.of(['2026-01-31', '2026-02-27']),
      to: throws.of(inHand),
    });
  const from = throws.of(places);
  const condition = throws.of(conditions);
  const there = ledger
    .filter((each) => each.component === component && each.owner === owner)
    .reduce(
      (sum, each) =>
        sum +
        (each.to === from && each.conditionAfter === condition ? each.quantity : 0) -
        (each.from === from && each.condition === condition ? each.quantity : 0),
      0,
    );
  const more = {
    component,
    owner,
    at,
    from,
    to: throws.of(places),
    // The one reason that says nothing of its places.
    reason: 'transfer' as const,
    condition,
    conditionAfter: throws.of(conditions),
  };
  return movement({ ...more, quantity: quantity(throws, Math.max(1, there)) });
}

function mayBeBooked(ledger: readonly Movement[], list: readonly Movement[]): boolean {
  const all = [...ledger];
  for (const each of list) {
    if (!(each.quantity >= 1 && each.quantity <= greatest)) return false;
    if (each.from === each.to && each.condition === each.conditionAfter) return false;
    const original = all.find((other) => other.id === each.reverses);
    if (each.reverses !== null) {
      if (original === undefined || original.reverses !== null) return false;
      if (all.some((other) => other.reverses === each.reverses)) return false;
      if (Date.parse(each.at) < Date.parse(original.at)) return false;
    }
    all.push(each);
  }
  return canBe(all);
}

const sorted = (lines: readonly StockLine[]): string[] => lines.map((line) => JSON.stringify(line)).sort();

test('After any sequence of commands the ledger balances for every component and owner, at every date', async () => {
  const seed = someSeed();
  console.info(`SEED=${seed}`);
  const throws = dice(seed);
  const verdicts = { booked: 0, refused: 0, reversals: 0 };
  for (let sequence = 0; sequence < 12; sequence += 1) {
    const book = await aYard(path.join(aFolder(), `${sequence}.regang`));
    const ledger: Movement[] = [];
    for (let step = 0; step < 40; step += 1) {
      const list = Array.from({ length: 1 + throws.below(3) }, () => randomMovement(throws, ledger));
      const answered = await run(book, async (writer) => {
        await writer.appendMovements(list, now);
        return { ok: true, value: list.length };
      });
      const context = `SEED=${seed}, sequence ${sequence}, step ${step}: ${JSON.stringify([list, answered])}`;
      expect(answered.ok, context).toBe(mayBeBooked(ledger, list));
      if (answered.ok) ledger.push(...list);
      verdicts[answered.ok ? 'booked' : 'refused'] += 1;
      if (answered.ok) verdicts.reversals += list.filter((each) => each.reverses !== null).length;
    }
    const found = await book.read(async (reader) => ({
      problems: await reader.check(),
      stock: await reader.stock(),
      booked: await reader.movements({ limit: 1000 }),
    }));
    expect(found.problems, `SEED=${seed}`).toEqual([]);
    expect(found.booked.map((each) => each.id).reverse()).toEqual(ledger.map((each) => each.id));
    expect(sorted(found.stock), `SEED=${seed}`).toEqual(sorted(stockAfter(ledger)));
    for (const moment of moments) {
      const at = `2026-03-${moment}`;
      const until = ledger.filter((each) => Date.parse(each.at) <= Date.parse(at));
      const stock = await book.read((reader) => reader.stock(at));
      expect(sorted(stock), `SEED=${seed}, at ${at}`).toEqual(sorted(stockAfter(until)));
      const later = await book.read((reader) => reader.movementsAfter(at));
      expect(later.length + until.length).toBe(ledger.length);
    }
    const sums = Map.groupBy(found.stock, (line) => `${line.component}|${line.owner}`);
    for (const [pair, lines] of sums)
      expect(
        lines.reduce((sum, line) => sum + BigInt(line.quantity), 0n),
        `SEED=${seed}, ${pair}`,
      ).toBe(0n);
  }
  // A run in which everything was refused, or nothing, has tested nothing.
  expect(verdicts.booked).toBeGreaterThan(50);
  expect(verdicts.refused).toBeGreaterThan(50);
  expect(verdicts.reversals).toBeGreaterThan(5);
});
