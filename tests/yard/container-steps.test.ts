// Containers: no more tags than pieces, and a move takes the one piece that the container is itself.
import { describe, expect, test } from 'vitest';
import { type Container, fillingAfter } from '../../core/yard/container.ts';
import { mayTag, moveContainer } from '../../core/yard/container-steps.ts';
import type { StockLine } from '../../core/yard/quantities.ts';

const rack = (code: string, place = 'ENN'): Container => ({
  code,
  component: 'RK',
  owner: 'OURS',
  last: {
    container: code,
    number: 1,
    place,
    filling: 'full',
    grossGrams: null,
    remark: null,
    at: '2026-03-02T07:00:00-05:00',
    who: 'tester',
  },
});
const held = (
  quantity: number,
  location = 'ENN',
  condition: StockLine['condition'] = 'ready',
): StockLine => ({
  component: 'RK',
  owner: 'OURS',
  location,
  condition,
  quantity,
  basis: null,
  basisDate: null,
});
const piece = { component: 'RK', owner: 'OURS', place: 'ENN' };

describe('tags', () => {
  test('2 racks bear 2 tags; a third is refused with both named', () => {
    const stock = [held(1), held(1, 'ENN', 'to-repair'), held(5, 'TB')];
    expect(mayTag(piece, [rack('RK-1')], stock).ok).toBe(true);
    expect(mayTag(piece, [rack('RK-1'), rack('RK-2')], stock)).toMatchObject({
      ok: false,
      error: {
        code: 'no-piece',
        message: 'ENN has 2 RK of OURS, and RK-1, RK-2 are tagged; there is none for one more tag.',
      },
    });
  });

  test('a tag elsewhere takes no piece here', () => {
    expect(mayTag(piece, [rack('RK-1', 'TB')], [held(1)]).ok).toBe(true);
  });
});

test('moved, one rack goes from ENN to TB, a ready one first', () => {
  expect(moveContainer(rack('RK-1'), 'TB', [held(2, 'ENN', 'to-repair'), held(1)])).toEqual({
    ok: true,
    value: {
      component: 'RK',
      quantity: 1,
      owner: 'OURS',
      from: 'ENN',
      to: 'TB',
      condition: 'ready',
      conditionAfter: 'ready',
      reason: 'transfer',
    },
  });
  expect(moveContainer(rack('RK-1'), 'TB', [held(1, 'TB')])).toMatchObject({ error: { code: 'no-piece' } });
});

test.each([
  ['full', true, false, 'part'],
  ['full', false, false, 'empty'],
  ['unknown', true, false, 'unknown'],
  ['empty', true, true, 'part'],
  ['full', true, true, 'full'],
] as const)('%s, still holding pieces %s, more put in %s: %s', (before, holds, wentIn, after) => {
  expect(fillingAfter(before, holds, wentIn)).toBe(after);
});
