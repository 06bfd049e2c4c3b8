import { describe, expect, test } from 'vitest';
import { groupsBy, withUnstocked } from '../../../renderer/screens/yard/yard-groups.ts';
import { basisWords, type StockRow, weakestBasis } from '../../../renderer/screens/yard/yard-words.ts';

function stock(part: Partial<StockRow>): StockRow {
  return {
    component: 'LK',
    name: 'Lock',
    kind: 'lock',
    owner: 'OURS',
    ownerKind: 'ours',
    location: 'YARD',
    locationKind: 'yard',
    condition: 'ready',
    quantity: 1,
    weightGrams: 2000,
    basis: null,
    basisDate: null,
    ...part,
  };
}

const rows = [
  stock({ quantity: 300, basis: 'counted', basisDate: '2026-02-27' }),
  stock({ quantity: 40, condition: 'to-clean' }),
  stock({
    quantity: 12,
    location: 'SITE',
    locationKind: 'site',
    basis: 'estimated',
    basisDate: '2026-02-20',
  }),
  stock({ component: 'RC', name: 'Clip', quantity: 9, owner: 'H1', ownerKind: 'supplier' }),
];

describe('the yard gathered', () => {
  test('pieces of others, and ours that are away, are in columns of their own and in no condition', () => {
    const [locks] = groupsBy(
      [
        ...rows.slice(0, 1),
        stock({ quantity: 4, owner: 'THEM', ownerKind: 'others' }),
        stock({ quantity: 7, location: 'SHOP', locationKind: 'repair', condition: 'to-repair' }),
        stock({ quantity: 5, location: 'J2', locationKind: 'other-job' }),
      ],
      'component',
      (row) => row.name,
    );
    expect([locks?.quantities.ready, locks?.quantities['to-repair']]).toEqual([300, 0]);
    expect([locks?.notOurs, locks?.away, locks?.quantity]).toEqual([4, 12, 316]);
  });

  test('a component that is needed and nowhere to be had is a row of nothing', () => {
    const groups = groupsBy(rows, 'component', (row) => row.name);
    const needed = [
      { component: 'LK', name: 'Lock' },
      { component: 'P9', name: 'Panel' },
    ];
    expect(withUnstocked(groups, needed).map(({ key, quantity }) => [key, quantity])).toEqual([
      ['LK', 352],
      ['RC', 9],
      ['P9', 0],
    ]);
  });

  test('by component: 312 locks ready, 40 to clean, 352 in all, clips apart', () => {
    const [locks, clips] = groupsBy(rows, 'component', (row) => row.name);
    expect([locks?.quantities.ready, locks?.quantities['to-clean'], locks?.quantity]).toEqual([312, 40, 352]);
    expect([clips?.component, clips?.quantity, clips?.owners]).toEqual(['RC', 9, ['H1']]);
  });
  test('by location: 349 pieces in the yard, 12 on site', () => {
    const groups = groupsBy(rows, 'location', (row) => row.locationKind);
    expect(groups.map(({ location, quantity }) => [location, quantity])).toEqual([
      ['YARD', 349],
      ['SITE', 12],
    ]);
  });
  test('no row is lost or told twice', () => {
    const parts = groupsBy(rows, 'location', () => '').flatMap((group) => group.rows);
    expect(new Set(parts)).toEqual(new Set(rows));
  });
});

describe('how a figure came about', () => {
  test('a line that stands for several is only as good as its weakest: estimated 20 Feb 2026', () => {
    expect(basisWords(weakestBasis(rows))).toBe('estimated 20 Feb 2026');
  });
  test('of two equal ones the oldest date counts', () => {
    const two = ['2026-02-27', '2026-02-01'].map((basisDate) => stock({ basis: 'counted', basisDate }));
    expect(basisWords(weakestBasis(two))).toBe('counted 1 Feb 2026');
  });
  test('a figure from a list says so, one without a basis says nothing', () => {
    expect(basisWords({ basis: 'taken-from-list', basisDate: null })).toBe('from a list');
    expect(basisWords({ basis: null, basisDate: null })).toBe('');
  });
});
