// Random gangs and random counts: whatever is counted, what moves is what was expected, the ledger takes it, nothing is
// below zero, and each piece is where the count says. The seed is printed by the test's own report where it fails.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkMovements } from '../../core/yard/check-movements.ts';
import { type Condition, type Movement, reversalOf } from '../../core/yard/movement.ts';
import { stockAfter, type StockLine } from '../../core/yard/quantities.ts';
import type { TicketEntry } from '../../core/yard/strip-ticket.ts';
import { allConditions, at, booked as bookedOf, locations, owners, ticketOf } from './a-ticket.ts';

const components = ['LK', 'P1', 'R12'] as const;
const places = ['G-1', 'J1/P01', 'BACK'] as const;

interface Case {
  readonly place: (typeof places)[number];
  readonly next: string;
  readonly stock: readonly StockLine[];
  /** Of each component, of each owner, how many were counted in each condition; the rest is missing. */
  readonly counts: readonly (readonly [
    component: string,
    owner: string,
    condition: Condition,
    quantity: number,
  ])[];
  readonly isMarked: boolean;
}

const someCase: fc.Arbitrary<Case> = fc
  .record({
    place: fc.constantFrom(...places),
    next: fc.constantFrom('break-down', 'fly-on', 'regang', 'stand-by'),
    isMarked: fc.boolean(),
    there: fc.array(
      fc.record({
        component: fc.constantFrom(...components),
        owner: fc.constantFrom('OURS', 'HIRE'),
        condition: fc.constantFrom<Condition>('ready', 'ready-hidden'),
        quantity: fc.integer({ min: 1, max: 60 }),
        found: fc.array(fc.tuple(fc.constantFrom(...allConditions), fc.integer({ min: 0, max: 20 })), {
          maxLength: 5,
        }),
      }),
      { minLength: 1, maxLength: 8 },
    ),
  })
  .map(({ there, ...of }) => {
    const stock = new Map<string, StockLine>();
    const counts: (readonly [string, string, Condition, number])[] = [];
    for (const { found, ...line } of there) {
      const key = JSON.stringify([line.component, line.owner, line.condition]);
      if (stock.has(key)) continue;
      stock.set(key, { ...line, location: of.place, basis: null, basisDate: null });
      let rest = line.quantity;
      for (const [condition, wished] of found) {
        const quantity = Math.min(rest, wished);
        rest -= quantity;
        counts.push([line.component, line.owner, condition, quantity]);
      }
      counts.push([line.component, line.owner, 'ready', 0]);
    }
    return { ...of, stock: [...stock.values()], counts };
  });

function ofCase({ place, next, stock, counts, isMarked }: Case) {
  const sums = new Map<string, number>();
  for (const line of stock) sums.set(line.component, (sums.get(line.component) ?? 0) + line.quantity);
  const expected = [...sums].map(([component, quantity]) => `${component} ${quantity} ${place}`).join('; ');
  const lines: TicketEntry['lines'] = counts.map(([component, owner, condition, quantity]) => ({
    part: 'P01/A1',
    component,
    condition,
    quantity,
    ...(isMarked && { owner }),
  }));
  const entries = [{ id: 'entry-0', number: 1, at, who: 'counter', device: 'here', lines }];
  const ticket = ticketOf(expected, place === 'J1/P01' ? 'loose' : next);
  const done = bookedOf(ticket, '', entries, { stock });
  return { sums, done, ticket };
}

const begun = (stock: readonly StockLine[]): Movement[] =>
  stock.map(({ component, owner, location, condition, quantity }, index) => ({
    id: `opening-${index}`,
    component,
    owner,
    quantity,
    from: 'OPENING',
    to: location,
    condition,
    conditionAfter: condition,
    reason: 'opening',
    at: '2026-03-01T07:00:00-05:00',
    who: 'opener',
    noteNumber: null,
    remark: null,
    basis: 'counted',
    basisDate: '2026-03-01',
    reverses: null,
    paper: null,
  }));

const isHeld = ({ location }: StockLine): boolean => location !== 'OPENING' && location !== 'LOST';

/** Lines of stock as words, in order. */
function wordsOf(lines: readonly StockLine[]): readonly string[] {
  return lines
    .filter(({ location }) => location !== 'OPENING')
    .map(({ component, owner, location, condition, quantity }) =>
      [component, owner, location, condition, quantity].join(' '),
    )
    .sort();
}

describe('any count of any gang', () => {
  test('is booked whole: counted and missing are what was expected, each piece is where it was counted to', () => {
    let looked = 0;
    fc.assert(
      fc.property(someCase, (given) => {
        const { sums, done } = ofCase(given);
        if (!done.ok) throw new Error(done.error.message);
        const { movements, result } = done.value;
        for (const line of result.lines) {
          const counted =
            line.ready + line.readyHidden + line.toClean + line.toRepair + line.quarantine + line.scrapped;
          expect(counted + line.missing).toBe(sums.get(line.component));
          looked += 1;
        }
        const after = stockAfter([...begun(given.stock), ...movements]);
        for (const line of after) if (line.location !== 'OPENING') expect(line.quantity).toBeGreaterThan(0);
        const sum = (component: string, fits: (line: StockLine) => boolean): number =>
          after.reduce(
            (all, line) => all + (line.component === component && fits(line) ? line.quantity : 0),
            0,
          );
        for (const line of result.lines) {
          expect(sum(line.component, ({ location }) => location === 'LOST')).toBe(line.missing);
          const inCondition = (condition: Condition): number =>
            sum(line.component, (each) => isHeld(each) && each.condition === condition);
          expect(inCondition('to-clean')).toBe(line.toClean);
          expect(inCondition('to-repair')).toBe(line.toRepair);
          expect(inCondition('scrapped')).toBe(line.scrapped);
          expect(inCondition('ready')).toBe(line.ready);
          expect(sum(line.component, ({ location }) => location !== 'OPENING')).toBe(
            sums.get(line.component),
          );
        }
        for (const { component, owner, quantity } of result.missing) {
          const there = given.stock.reduce(
            (all, line) => all + (line.component === component && line.owner === owner ? line.quantity : 0),
            0,
          );
          expect(quantity).toBeLessThanOrEqual(there);
        }
        // Marked counts leave no doubt whose the missing ones were.
        if (given.isMarked)
          for (const owner of ['OURS', 'HIRE'])
            for (const component of sums.keys()) {
              const there = given.stock.reduce(
                (all, line) =>
                  all + (line.component === component && line.owner === owner ? line.quantity : 0),
                0,
              );
              const seen = given.counts.reduce(
                (all, [of, whose, , quantity]) => all + (of === component && whose === owner ? quantity : 0),
                0,
              );
              const missing = result.missing.find(
                (each) => each.component === component && each.owner === owner,
              );
              expect(missing?.quantity ?? 0).toBe(there - seen);
            }
      }),
      { numRuns: 1000 },
    );
    expect(looked).toBeGreaterThan(1000);
  });

  test('is taken by the ledger, and taken back movement by movement leaves what was there', () => {
    fc.assert(
      fc.property(someCase, (given) => {
        const { done } = ofCase(given);
        if (!done.ok) throw new Error(done.error.message);
        const { movements } = done.value;
        const before = begun(given.stock);
        const view = {
          components: new Set<string>(components),
          owners: new Map(owners.map(({ code, kind }) => [code, kind])),
          locations: new Map([
            ...locations.map(({ code, kind }) => [code, kind] as const),
            ['OPENING', 'opening'] as const,
          ]),
          booked: new Map(),
          before: stockAfter(before),
          since: [],
        };
        expect(checkMovements(movements, view)).toBeNull();
        const back = movements.map((movement) =>
          reversalOf(movement, { id: `${movement.id}-back`, at, who: 'booker', remark: null }),
        );
        expect(wordsOf(stockAfter([...before, ...movements, ...back]))).toEqual(wordsOf(stockAfter(before)));
      }),
      { numRuns: 500 },
    );
  });
});
