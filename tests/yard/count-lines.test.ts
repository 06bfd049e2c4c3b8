// What each reason weighs is common practice, no source: the tests hold the order that the reasons promise.
import { describe, expect, test } from 'vitest';
import { locationLines, type SpotFacts, spotLines } from '../../core/yard/count-lines.ts';
import { lastCounted } from '../../core/yard/last-counted.ts';
import type { LocationKind } from '../../core/yard/movement.ts';
import type { StockLine } from '../../core/yard/quantities.ts';

const line = (component: string, more: Partial<StockLine> = {}): StockLine => ({
  component,
  owner: 'OURS',
  location: 'ENN',
  condition: 'ready',
  quantity: 10,
  basis: 'counted',
  basisDate: '2026-02-20',
  ...more,
});

const kinds = new Map<string, LocationKind>([
  ['ENN', 'yard'],
  ['TB26/P01', 'pour'],
  ['REP', 'repair'],
]);

function facts(stock: readonly StockLine[], more: Partial<SpotFacts> = {}): SpotFacts {
  return {
    stock,
    kinds,
    lastCounted: lastCounted(stock, []),
    classes: new Map(),
    movedSince: () => 0,
    partners: new Map(),
    oldBefore: '2026-02-01',
    ...more,
  };
}

const chosen = (of: SpotFacts, count = 10) => spotLines(of, count).map(({ component }) => component);

describe('the lines of a spot check', () => {
  test('ten of twelve, the same ten every time', () => {
    const stock = Array.from({ length: 12 }, (_, index) => line(`C${String(index).padStart(2, '0')}`));
    const first = chosen(facts(stock));
    expect(first).toHaveLength(10);
    expect(chosen(facts([...stock].reverse()))).toEqual(first);
  });

  test('never counted, then estimated or from a list, go before what was counted', () => {
    const stock = [line('A'), line('B', { basis: null, basisDate: null }), line('C', { basis: 'estimated' })];
    expect(chosen(facts(stock), 2)).toEqual(['B', 'C']);
  });

  test('counted longest ago goes before counted of late', () => {
    expect(chosen(facts([line('A'), line('B', { basisDate: '2025-11-01' })]), 1)).toEqual(['B']);
  });

  test('class A goes before C, and what moved before what lay still', () => {
    const stock = [line('A'), line('B')];
    expect(chosen(facts(stock, { classes: new Map([['B', 'A']]) }), 1)).toEqual(['B']);
    expect(chosen(facts(stock, { movedSince: (_, component) => (component === 'B' ? 3 : 0) }), 1)).toEqual([
      'B',
    ]);
  });

  test('a look-alike at the same place is counted along with the one it is taken for', () => {
    const stock = [
      line('P830'),
      line('P836', { basis: 'estimated' }),
      line('X', { basisDate: '2026-01-05' }),
    ];
    const partners = new Map([
      ['P836', ['P830']],
      ['P830', ['P836']],
    ]);
    expect(chosen(facts(stock, { partners }), 2)).toEqual(['P830', 'P836']);
  });

  test('what stands at a pour or is out for repair is not on it, nor what is not there', () => {
    const stock = [
      line('A', { location: 'TB26/P01' }),
      line('B', { location: 'REP' }),
      line('C', { quantity: 0 }),
    ];
    expect(chosen(facts(stock))).toEqual([]);
  });

  test('each line says why: from a list, class C, 4 movements', () => {
    const stock = [line('LK', { basis: 'taken-from-list' })];
    expect(spotLines(facts(stock, { movedSince: () => 4 }), 10)[0]).toMatchObject({
      booked: 10,
      lastCountedOn: '2026-02-20',
      reasons: [{ why: 'from-a-list' }, { why: 'class', class: 'C' }, { why: 'moved', movements: 4 }],
    });
  });
});

describe('the lines of a place', () => {
  const stock = [
    line('R8', { owner: 'TFH' }),
    line('R8'),
    line('R8', { condition: 'to-clean' }),
    line('A'),
    line('B', { location: 'REP' }),
  ];

  test('each component once, in shelf order, of all owners together', () => {
    expect(locationLines(stock, ['ENN'], false)).toEqual([
      { location: 'ENN', component: 'A', owner: null },
      { location: 'ENN', component: 'R8', owner: null },
    ]);
  });

  test('or each owner by itself', () => {
    expect(locationLines(stock, ['ENN'], true).map(({ component, owner }) => [component, owner])).toEqual([
      ['A', 'OURS'],
      ['R8', 'OURS'],
      ['R8', 'TFH'],
    ]);
  });
});
