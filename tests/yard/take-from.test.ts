// Whose pieces go first, and what is said where there are not enough. That ours go before hired ones is common
// practice, no source.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conditions, type Condition, type Owner } from '../../core/yard/movement.ts';
import type { StockLine } from '../../core/yard/quantities.ts';
import { takeFrom, takingOrder } from '../../core/yard/take-from.ts';

const line = (
  owner: string,
  location: string,
  quantity: number,
  condition: Condition = 'ready',
  component = 'LK',
): StockLine => ({ component, owner, location, condition, quantity, basis: null, basisDate: null });

const owners: readonly Owner[] = [
  { code: 'Z-HIRE', name: 'Z', kind: 'supplier', agreement: 'Z1' },
  { code: 'A-HIRE', name: 'A', kind: 'supplier', agreement: 'A1' },
  { code: 'OURS', name: 'Ours', kind: 'ours', agreement: null },
  { code: 'FOUND', name: 'Found', kind: 'others', agreement: null },
];
const order = takingOrder(owners);

describe('whose pieces go', () => {
  test('ours, then suppliers by code, never what was found and is not ours', () => {
    expect(order).toEqual({ owners: ['OURS', 'A-HIRE', 'Z-HIRE'], notOf: ['FOUND'] });
    const lines = [
      line('FOUND', 'Y', 9),
      line('Z-HIRE', 'Y', 5),
      line('A-HIRE', 'Y', 2),
      line('OURS', 'Y', 3),
    ];
    expect(takeFrom(lines, { component: 'LK', quantity: 7 }, order)).toEqual({
      ok: true,
      value: [
        { owner: 'OURS', location: 'Y', condition: 'ready', quantity: 3 },
        { owner: 'A-HIRE', location: 'Y', condition: 'ready', quantity: 2 },
        { owner: 'Z-HIRE', location: 'Y', condition: 'ready', quantity: 2 },
      ],
    });
    expect(takeFrom(lines, { component: 'LK', quantity: 11 }, order).ok).toBe(false);
  });

  test('of one owner ready before ready for hidden faces, and locations in the order given', () => {
    const lines = [line('OURS', 'A', 4, 'ready-hidden'), line('OURS', 'C', 4), line('OURS', 'B', 4)];
    const taken = takeFrom(lines, { component: 'LK', quantity: 9 }, { ...order, locations: ['C', 'B', 'A'] });
    expect(taken.ok && taken.value.map((each) => [each.location, each.quantity])).toEqual([
      ['C', 4],
      ['B', 4],
      ['A', 1],
    ]);
  });

  test('too few: 9 wanted, 5 there, and 3 to clean named', () => {
    const lines = [
      line('OURS', 'Y', 5),
      line('OURS', 'Y', 3, 'to-clean'),
      line('OURS', 'Y', 9, 'ready', 'P1'),
    ];
    expect(takeFrom(lines, { component: 'LK', quantity: 9 }, order)).toEqual({
      ok: false,
      error: {
        code: 'not-enough',
        message: '9 of LK are wanted; there are 5: 5 ready at Y (OURS).',
        field: 'quantity',
        hint: 'Maybe others serve, once moved or made ready: 3 to-clean at Y (OURS).',
      },
    });
  });
});

const anyLine = fc.record({
  component: fc.constantFrom('LK', 'P1'),
  owner: fc.constantFrom('OURS', 'A-HIRE', 'Z-HIRE', 'FOUND'),
  location: fc.constantFrom('Y', 'S'),
  condition: fc.constantFrom(...conditions),
  quantity: fc.integer({ min: -5, max: 30 }),
  basis: fc.constant(null),
  basisDate: fc.constant(null),
});

test('never more than a line has, exactly what is wanted, and a supplier only where ours are used up', () => {
  const keyed = fc.uniqueArray(anyLine, {
    selector: (each) => [each.component, each.owner, each.location, each.condition].join(),
    maxLength: 30,
  });
  fc.assert(
    fc.property(keyed, fc.integer({ min: 1, max: 60 }), (lines, quantity) => {
      const usable = lines.filter(
        (each) =>
          each.component === 'LK' &&
          each.owner !== 'FOUND' &&
          each.quantity > 0 &&
          (each.condition === 'ready' || each.condition === 'ready-hidden'),
      );
      const there = usable.reduce((sum, each) => sum + each.quantity, 0);
      const taken = takeFrom(lines, { component: 'LK', quantity }, order);
      expect(taken.ok).toBe(there >= quantity);
      if (!taken.ok) return;
      expect(taken.value.reduce((sum, each) => sum + each.quantity, 0)).toBe(quantity);
      for (const part of taken.value) {
        const from = usable.find(
          (each) =>
            each.owner === part.owner && each.location === part.location && each.condition === part.condition,
        );
        expect(part.quantity).toBeLessThanOrEqual(from?.quantity ?? 0);
      }
      const ours = usable
        .filter((each) => each.owner === 'OURS')
        .reduce((sum, each) => sum + each.quantity, 0);
      const oursTaken = taken.value
        .filter((each) => each.owner === 'OURS')
        .reduce((sum, each) => sum + each.quantity, 0);
      expect(oursTaken).toBe(Math.min(ours, quantity));
    }),
  );
});
