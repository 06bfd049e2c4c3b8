import { describe, expect, test } from 'vitest';
import { lastCounted } from '../../core/yard/last-counted.ts';
import type { CountResult } from '../../core/yard/stock-count.ts';

const line = {
  component: 'LK',
  owner: 'OURS',
  location: 'ENN',
  basis: 'taken-from-list',
  basisDate: '2026-02-20',
} as const;

function count(number: number, day: string, more: Partial<CountResult['lines'][number]> = {}) {
  const at = `${day}T16:00:00-05:00`;
  const counted: CountResult['lines'][number] = {
    location: 'ENN',
    component: 'LK',
    owner: null,
    booked: 142,
    counted: 142,
    uncertainty: 0,
    countedAt: at,
    class: 'A',
    within: true,
    explained: [],
    leftOpen: 0,
    ...more,
  };
  return { number, result: { at, who: 'tester', lines: [counted] } };
}

const figure = (...counts: readonly ReturnType<typeof count>[]) => lastCounted([line], counts)[0];

describe('when a quantity was last counted', () => {
  test('never since the book began: the opening figure of 20 February, from a list', () => {
    expect(figure()).toMatchObject({ basis: 'taken-from-list', date: '2026-02-20', count: null });
  });

  test('a count takes its place, and the newest count does whatever its number', () => {
    const counts = [count(2, '2026-03-10'), count(1, '2026-03-24'), count(3, '2026-03-17')];
    expect(figure(...counts)).toMatchObject({ basis: 'counted', date: '2026-03-24', count: 'N-1' });
  });

  test('a count of that owner alone speaks for that owner only', () => {
    expect(figure(count(1, '2026-03-10', { owner: 'TFH' }))).toMatchObject({ count: null });
    expect(figure(count(1, '2026-03-10', { owner: 'OURS' }))).toMatchObject({ count: 'N-1' });
  });

  test('an uncertain figure and a difference left open are estimates', () => {
    expect(figure(count(1, '2026-03-10', { uncertainty: 20 }))).toMatchObject({ basis: 'estimated' });
    expect(figure(count(1, '2026-03-10', { leftOpen: 4 }))).toMatchObject({ basis: 'estimated' });
  });

  test('an opening figure booked for a day after the count is the newer one', () => {
    expect(figure(count(1, '2026-02-10'))).toMatchObject({ basis: 'taken-from-list', count: null });
  });

  test('conditions are one place: the weaker basis and the older date of the two', () => {
    const [only, ...more] = lastCounted([{ ...line, basis: 'counted', basisDate: '2026-02-25' }, line], []);
    expect(more).toEqual([]);
    expect(only).toMatchObject({ basis: 'taken-from-list', date: '2026-02-20' });
  });

  test('pieces that came by a movement and were never counted rest on nothing', () => {
    expect(lastCounted([{ ...line, basis: null, basisDate: null }], [])[0]).toMatchObject({
      basis: null,
      date: null,
    });
  });

  test('a count that is open says nothing', () => {
    expect(lastCounted([line], [{ number: 1, result: null }])[0]?.count).toBeNull();
  });
});
