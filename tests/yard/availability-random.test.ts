// What holds for every history of a yard, whatever is moved, stripped, cleaned, damaged, lost and repaired.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ReadyLevel, readyLevels, type YardFacts } from '../../core/yard/availability.ts';
import { type Condition, isHeld, isInHand, isReady, type Movement } from '../../core/yard/movement.ts';
import { stockAfter } from '../../core/yard/quantities.ts';
import { at, hour, line, locations, movement, startMs, yardOf } from './yard-of.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_260_404);
const settings = { seed, numRuns: 400 };

type Place = readonly [location: string, condition: Condition];
/** From where to where in what condition, and why. */
const kinds: readonly (readonly [Place, Place, Movement['reason']])[] = [
  [['YARD', 'ready'], ['TB/P1', 'ready'], 'issue'],
  [['YARD', 'ready'], ['G-1', 'ready'], 'issue'],
  [['TB/P1', 'ready'], ['YARD', 'to-clean'], 'strip'],
  [['G-1', 'ready'], ['G-1', 'to-clean'], 'strip'],
  [['G-1', 'to-clean'], ['YARD', 'to-clean'], 'break-down'],
  [['G-1', 'ready'], ['YARD', 'to-clean'], 'break-down'],
  [['TB/P1', 'ready'], ['YARD', 'to-repair'], 'strip'],
  [['TB/P1', 'ready'], ['LOST', 'ready'], 'lost'],
  [['YARD', 'to-clean'], ['YARD', 'ready'], 'clean'],
  [['YARD', 'to-clean'], ['YARD', 'ready-hidden'], 'clean'],
  [['YARD', 'to-clean'], ['YARD', 'to-repair'], 'clean'],
  [['YARD', 'to-clean'], ['SITE', 'to-clean'], 'transfer'],
  [['SITE', 'to-clean'], ['SITE', 'ready'], 'clean'],
  [['YARD', 'to-clean'], ['LOST', 'to-clean'], 'lost'],
  [['YARD', 'to-repair'], ['SHOP', 'to-repair'], 'transfer'],
  [['SHOP', 'to-repair'], ['YARD', 'ready'], 'repair'],
  [['YARD', 'ready'], ['YARD', 'quarantine'], 'quarantine'],
  [['LOST', 'ready'], ['YARD', 'ready'], 'found'],
  [['YARD', 'ready'], ['JOB2', 'ready'], 'transfer'],
  [['JOB2', 'ready'], ['YARD', 'ready'], 'transfer'],
  [['H1', 'ready'], ['YARD', 'ready'], 'delivery'],
];

const start = [
  line({ quantity: 20 }),
  line({ condition: 'to-clean', quantity: 6 }),
  line({ location: 'SHOP', condition: 'to-repair', quantity: 3 }),
];
const dirtyAtStart = [
  { component: 'LK', owner: 'ours', location: 'YARD', quantity: 6, sinceMs: startMs - 40 * hour },
];

const steps = fc.array(
  fc.tuple(
    fc.integer({ min: 0, max: kinds.length - 1 }),
    fc.integer({ min: 1, max: 8 }),
    fc.integer({ min: 0, max: 12 }),
  ),
  { maxLength: 30 },
);
const cleanings = fc.oneof(fc.constant(null), fc.integer({ min: 1, max: 12 }));

const keyOf = ([location, condition]: Place): string => `${location} ${condition}`;

/** Only what the ledger would take: never more than there is, but for suppliers. */
function historyOf(wanted: readonly (readonly [number, number, number])[]): Movement[] {
  const there = new Map<string, number>();
  for (const { location, condition, quantity } of start) there.set(keyOf([location, condition]), quantity);
  const movements: Movement[] = [];
  let hours = 0;
  for (const [index, most, later] of wanted) {
    hours += later;
    const [from, to, reason] = kinds[index] ?? kinds[0] ?? [['YARD', 'ready'], ['YARD', 'ready'], 'clean'];
    const known = from[0] === 'H1' ? most : (there.get(keyOf(from)) ?? 0);
    const quantity = Math.min(most, known);
    if (quantity === 0) continue;
    there.set(keyOf(from), known - quantity);
    there.set(keyOf(to), (there.get(keyOf(to)) ?? 0) + quantity);
    movements.push(
      movement({
        id: `r-${movements.length}`,
        from: from[0],
        to: to[0],
        condition: from[1],
        conditionAfter: to[1],
        reason,
        quantity,
        at: at(hours),
      }),
    );
  }
  return movements;
}

function factsOf(movements: readonly Movement[], perDay: number | null, nowHours: number): YardFacts {
  const day = 24 * hour;
  return yardOf({
    start,
    dirtyAtStart,
    movements,
    nowMs: startMs + nowHours * hour,
    ...(perDay === null
      ? {}
      : {
          pace: {
            how: 'by-the-day',
            perDay,
            shiftEndingAfter: (ms) => {
              const today = Math.floor(ms / day) * day;
              const from = (ms < today + 15 * hour ? today : today + day) + 7 * hour;
              return { from, to: from + 8 * hour };
            },
          },
        }),
  });
}

const levelsOf = (facts: YardFacts): readonly ReadyLevel[] => readyLevels(facts).get('LK') ?? [];
const levelAt = (levels: readonly ReadyLevel[], ms: number): number =>
  levels.findLast(({ fromMs }) => fromMs === null || fromMs <= ms)?.quantity ?? 0;
const momentsOf = (...lists: readonly (readonly ReadyLevel[])[]): number[] => [
  startMs - 1,
  ...lists.flat().flatMap(({ fromMs }) => (fromMs === null ? [] : [fromMs - 1, fromMs])),
  startMs + 1e12,
];

/** By the plain sum of the ledger, without knowing anything of lots. */
function stockAt(movements: readonly Movement[], ms: number) {
  const opening = start.map((each) =>
    movement({
      id: `o-${each.location}${each.condition}`,
      from: 'OPEN',
      to: each.location,
      condition: each.condition,
      quantity: each.quantity,
      reason: 'opening',
    }),
  );
  return stockAfter([...opening, ...movements.filter((each) => Date.parse(each.at) <= ms)]);
}
const kindOf = (code: string) => locations.find((each) => each.code === code)?.kind ?? 'opening';

describe(`with seed ${seed}`, () => {
  test('levels never exceed what is held, and are never below what is ready in hand once all is known', () => {
    let looked = 0;
    fc.assert(
      fc.property(steps, cleanings, fc.integer({ min: 0, max: 200 }), (wanted, perDay, now) => {
        const movements = historyOf(wanted);
        const levels = levelsOf(factsOf(movements, perDay, now));
        for (const ms of momentsOf(levels)) {
          const stock = stockAt(movements, ms);
          const sum = (counts: (one: (typeof stock)[number]) => boolean): number =>
            stock.filter(counts).reduce((all, { quantity }) => all + quantity, 0);
          const held = sum(({ location }) => isHeld(kindOf(location)));
          const ready = sum(({ location, condition }) => isInHand(kindOf(location)) && isReady(condition));
          expect(levelAt(levels, ms)).toBeLessThanOrEqual(held);
          expect(levelAt(levels, ms)).toBeGreaterThanOrEqual(ready);
          looked += 1;
        }
      }),
      settings,
    );
    expect(looked).toBeGreaterThan(1000);
  });

  test('a loss more never raises a level at any moment', () => {
    let looked = 0;
    fc.assert(
      fc.property(
        steps,
        cleanings,
        fc.integer({ min: 0, max: 200 }),
        fc.nat(),
        fc.constantFrom<Condition>('ready', 'to-clean'),
        (wanted, perDay, now, place, condition) => {
          const movements = historyOf(wanted);
          const index = place % (movements.length + 1);
          const lostAt = movements[index]?.at ?? at(400);
          const lost = movement({
            from: 'YARD',
            to: 'LOST',
            condition,
            reason: 'lost',
            quantity: 1,
            at: lostAt,
          });
          const after = movements.toSpliced(index, 0, lost);
          // Only where the ledger would take it: nothing below nothing at any later moment.
          const isPossible = after.every(({ at: text }) =>
            stockAt(after, Date.parse(text)).every(
              ({ location, quantity }) => quantity >= 0 || !isHeld(kindOf(location)),
            ),
          );
          fc.pre(isPossible);
          const [before, less] = [movements, after].map((each) => levelsOf(factsOf(each, perDay, now)));
          if (before === undefined || less === undefined) return;
          for (const ms of momentsOf(before, less))
            expect(levelAt(less, ms)).toBeLessThanOrEqual(levelAt(before, ms));
          looked += 1;
        },
      ),
      settings,
    );
    expect(looked).toBeGreaterThan(100);
  });

  test('cleaned earlier never lowers a level at any moment', () => {
    let looked = 0;
    fc.assert(
      fc.property(
        steps,
        cleanings,
        fc.integer({ min: 0, max: 200 }),
        fc.nat(),
        (wanted, perDay, now, place) => {
          const movements = historyOf(wanted);
          const cleaned = movements.filter(
            ({ reason, conditionAfter }) => reason === 'clean' && isReady(conditionAfter),
          );
          const one = cleaned[place % Math.max(1, cleaned.length)];
          fc.pre(one !== undefined);
          if (one === undefined) return;
          const others = movements.filter((each) => each !== one);
          const earlierBy = Date.parse(one.at) - 9 * hour;
          const index = others.findIndex((each) => Date.parse(each.at) > earlierBy);
          const earlier = others.toSpliced(index < 0 ? others.length : index, 0, {
            ...one,
            at: new Date(earlierBy).toISOString(),
          });
          const isPossible = earlier.every((_, last) =>
            stockAfterFirst(earlier, last + 1).every(
              ({ location, quantity }) => quantity >= 0 || !isHeld(kindOf(location)),
            ),
          );
          fc.pre(isPossible);
          const late = levelsOf(factsOf(movements, perDay, now));
          const early = levelsOf(factsOf(earlier, perDay, now));
          for (const ms of momentsOf(late, early))
            expect(levelAt(early, ms)).toBeGreaterThanOrEqual(levelAt(late, ms));
          looked += 1;
        },
      ),
      settings,
    );
    expect(looked).toBeGreaterThan(100);
  });
});

function stockAfterFirst(movements: readonly Movement[], count: number) {
  return stockAt(movements.slice(0, count), Number.MAX_SAFE_INTEGER);
}
