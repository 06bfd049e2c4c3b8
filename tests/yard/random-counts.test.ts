// Random ledgers, random counts. Whoever counts the truth at his moment finds no difference, whatever moves before and
// after; and whatever else is found and explained stands in the ledger afterwards, at that moment, exactly.
import { expect, test } from 'vitest';
import { countDifferences } from '../../core/yard/count-differences.ts';
import { checkExplained, type ExplainedLine } from '../../core/yard/count-explained.ts';
import { countMovements } from '../../core/yard/count-movements.ts';
import { checkMovements } from '../../core/yard/check-movements.ts';
import { type Condition, conditions, type Movement } from '../../core/yard/movement.ts';
import { type Dice, dice, someSeed } from '../book/dice.ts';
import type { CountEntry, CountLine } from '../../core/yard/stock-count.ts';
import { facts, locations, move, owners, stockAt } from './a-count.ts';

const places = ['YARD', 'RACK'];
const components = ['LK', 'R8', 'P836'];
const lines: readonly CountLine[] = places.flatMap((location) =>
  components.map((component) => ({ location, component, owner: null })),
);

function minute(throws: Dice): string {
  const minutes = throws.below(180);
  return `2026-03-10T${String(15 + Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}:00-04:00`;
}

/** Opening figures, then movements within the hours of the count; only what the ledger would book. */
function randomLedger(throws: Dice): readonly Movement[] {
  const ledger: Movement[] = places.flatMap((to) =>
    components.flatMap((component) =>
      ['OURS', 'H1'].map((owner) => move({ to, component, owner, quantity: 1 + throws.below(60) })),
    ),
  );
  const times = Array.from({ length: 40 }, () => minute(throws)).sort();
  for (const at of times) {
    const from = throws.of([...places, 'POUR']);
    const [component, owner] = [throws.of(components), throws.of(['OURS', 'H1'])];
    const here = stockAt(ledger, at).filter(
      (each) =>
        each.location === from && each.component === component && each.owner === owner && each.quantity > 0,
    );
    if (here.length === 0) continue;
    const part = throws.of(here);
    const to = throws.of(['YARD', 'RACK', 'POUR', 'LOST'].filter((place) => place !== from));
    const quantity = 1 + throws.below(part.quantity);
    ledger.push(
      move({
        component,
        owner,
        from,
        to,
        quantity,
        condition: part.condition,
        conditionAfter: throws.of(['ready', 'to-clean']),
        at,
      }),
    );
  }
  return ledger;
}

/** What truly lies at a line's place at a moment. */
function truth(ledger: readonly Movement[], line: CountLine, at: string): Map<Condition, number> {
  const found = new Map<Condition, number>();
  for (const each of stockAt(ledger, at))
    if (each.location === line.location && each.component === line.component)
      found.set(each.condition, (found.get(each.condition) ?? 0) + each.quantity);
  return found;
}

function entered(
  number: number,
  line: CountLine,
  at: string,
  found: ReadonlyMap<Condition, number>,
): CountEntry {
  const parts = [...found].map(([condition, quantity]) => ({ ...line, condition, quantity }));
  const none = { ...line, condition: 'ready' as const, quantity: 0 };
  return {
    id: `entry-number-${number}`,
    number,
    counter: 1,
    at,
    who: 'counter',
    device: 'here',
    lines: parts.length > 0 ? parts : [none],
  };
}

test('counters who count the truth at their moments find no difference', () => {
  const seed = someSeed();
  const throws = dice(seed);
  let withMoves = 0;
  for (let round = 0; round < 150; round += 1) {
    const ledger = randomLedger(throws);
    const entries = lines.map((line, index) => {
      const at = minute(throws);
      return entered(index + 1, line, at, truth(ledger, line, at));
    });
    const differences = countDifferences(facts(ledger, lines, entries));
    for (const each of differences)
      expect([each.difference, each.changes.moves, each.state], `seed ${seed}, round ${round}`).toEqual([
        0,
        [],
        'counted',
      ]);
    withMoves += ledger.filter((each) =>
      entries.some(({ at }) => Date.parse(each.at) > Date.parse(at)),
    ).length;
  }
  expect(withMoves).toBeGreaterThan(1000);
});

test('what is found and explained stands in the ledger at the moment at which it was counted', () => {
  const seed = someSeed();
  const throws = dice(seed);
  let movements = 0;
  for (let round = 0; round < 150; round += 1) {
    const ledger = randomLedger(throws);
    // Counted after everything moved: what moved later is another test's.
    const entries = lines.map((line, index) => {
      const at = `2026-03-10T19:0${throws.below(6)}:00-04:00`;
      const found = new Map(truth(ledger, line, at));
      for (let times = throws.below(4); times > 0; times -= 1) {
        const condition = throws.of(conditions);
        found.set(condition, Math.max(0, (found.get(condition) ?? 0) + throws.below(13) - 6));
      }
      return entered(index + 1, line, at, found);
    });
    const differences = countDifferences(facts(ledger, lines, entries));
    const explained = differences.map((each): ExplainedLine => {
      const changed = each.changes.moves.reduce((sum, { quantity }) => sum + quantity, 0);
      const size = Math.abs(each.difference);
      const some = throws.below(size + 1);
      const [one, other] =
        each.difference < 0 ? (['lost', 'scrapped'] as const) : (['found', 'not-ours'] as const);
      const all = [
        { how: 'condition-changed' as const, quantity: changed },
        { how: one, quantity: some },
        { how: other, quantity: size - some },
      ];
      const { location, component, owner } = each;
      return {
        location,
        component,
        owner,
        leftOpen: 0,
        explained: all
          .filter(({ quantity }) => quantity > 0)
          .map((of) => ({ ...of, remark: 'seen by another' })),
      };
    });
    const kinds = new Map(locations.map(({ code, kind }) => [code, kind]));
    const checked = checkExplained(
      { differences, locations: kinds, partners: new Map(), leaveOut: false },
      explained,
    );
    if (!checked.ok) throw new Error(`seed ${seed}, round ${round}: ${checked.error.message}`);
    const booking = {
      count: { id: 'count-of-test', number: 1 },
      who: 'booker',
      lines: checked.value,
      locations,
      owners,
    };
    const made = countMovements({ ...booking, stockAt: (at) => stockAt(ledger, at) });
    if (!made.ok) throw new Error(`seed ${seed}, round ${round}: ${made.error.message}`);
    movements += made.value.length;
    const after = [...ledger, ...made.value];
    for (const { lines: parts, at } of entries) {
      const [line] = parts;
      if (line === undefined) throw new Error('Nothing was entered.');
      const booked = Object.fromEntries([...truth(after, line, at)].filter(([, quantity]) => quantity !== 0));
      const found = Object.fromEntries(
        parts.filter(({ quantity }) => quantity > 0).map(({ condition, quantity }) => [condition, quantity]),
      );
      expect(booked, `seed ${seed}, round ${round}`).toEqual(found);
    }
    // The ledger itself would take them.
    const refused = checkMovements(made.value, {
      components: new Set(components),
      owners: new Map(owners.map(({ code, kind }) => [code, kind])),
      locations: kinds,
      booked: new Map(),
      before: stockAt(ledger, '2026-03-10T18:59:59-04:00'),
      since: ledger.filter((each) => Date.parse(each.at) > Date.parse('2026-03-10T18:59:59-04:00')),
    });
    expect(refused, `seed ${seed}, round ${round}`).toBeNull();
  }
  expect(movements).toBeGreaterThan(500);
});
