import { describe, expect, test } from 'vitest';
import type { Location, Movement } from '../../core/yard/movement.ts';
import type { StockLine } from '../../core/yard/quantities.ts';
import { readyStock } from '../../core/yard/ready-levels.ts';

const locations: readonly Location[] = [
  { code: 'YARD', name: 'Yard', kind: 'yard' },
  { code: 'SITE', name: 'Site', kind: 'site' },
  { code: 'SHOP', name: 'Repair shop', kind: 'repair' },
  { code: 'H1', name: 'Supplier', kind: 'supplier' },
];

const line = (changes: Partial<StockLine>): StockLine => ({
  component: 'LK',
  owner: 'ours',
  location: 'YARD',
  condition: 'ready',
  quantity: 10,
  basis: 'counted',
  basisDate: '2026-02-20',
  ...changes,
});

const movement = (changes: Partial<Movement>): Movement => ({
  id: 'm',
  component: 'LK',
  quantity: 4,
  owner: 'ours',
  from: 'H1',
  to: 'YARD',
  condition: 'ready',
  conditionAfter: 'ready',
  reason: 'delivery',
  at: '2026-03-05T09:00:00-05:00',
  who: 'yard',
  noteNumber: null,
  remark: null,
  basis: null,
  basisDate: null,
  reverses: null,
  paper: null,
  ...changes,
});

const ready = (start: readonly StockLine[], later: readonly Movement[] = []) =>
  readyStock(start, later, locations, ({ at }) => Date.parse(at)).get('LK');

describe('what a plan may count on', () => {
  test('only ready pieces in hand count, of every owner: 10 + 5 of 34', () => {
    const start = [
      line({}),
      line({ owner: 'H1', location: 'SITE', quantity: 5 }),
      line({ condition: 'to-clean', quantity: 7 }),
      line({ location: 'SHOP', quantity: 8 }),
      line({ condition: 'quarantine', quantity: 4 }),
    ];
    expect(ready(start)?.levels).toEqual([{ from: null, quantity: 15 }]);
  });

  test('a delivery to come raises the level from its moment on, a return lowers it', () => {
    const back = movement({
      from: 'YARD',
      to: 'H1',
      quantity: 6,
      reason: 'return',
      at: '2026-03-09T09:00:00-04:00',
    });
    expect(ready([line({})], [movement({}), back])?.levels).toEqual([
      { from: null, quantity: 10 },
      { from: '2026-03-05T09:00:00-05:00', quantity: 14 },
      { from: '2026-03-09T09:00:00-04:00', quantity: 8 },
    ]);
  });

  test('movements of one moment are one step, in whatever offset it is written', () => {
    const same = movement({ quantity: 2, at: '2026-03-05T14:00:00Z' });
    expect(ready([], [movement({}), same])?.levels).toEqual([
      { from: null, quantity: 0 },
      { from: '2026-03-05T14:00:00Z', quantity: 6 },
    ]);
  });

  test('pieces that are moved within what is in hand change nothing, cleaned ones become ready', () => {
    const within = movement({ from: 'YARD', to: 'SITE' });
    const cleaned = movement({ from: 'YARD', condition: 'to-clean', reason: 'clean' });
    expect(ready([line({})], [within])?.levels).toHaveLength(1);
    expect(ready([line({})], [cleaned])?.levels.at(-1)?.quantity).toBe(14);
  });

  test('one estimated figure makes the whole rest on an estimate', () => {
    expect(ready([line({}), line({ owner: 'H1', basis: 'estimated' })])?.basis).toBe('estimated');
    expect(ready([line({}), line({ owner: 'H1', basis: 'taken-from-list' })])?.basis).toBe('taken-from-list');
    expect(ready([line({})])?.basis).toBe('counted');
  });
});
