import { describe, expect, test } from 'vitest';
import { compareShortfalls } from '../../core/procedures/compare-shortfalls.ts';

type Shortfall = Parameters<typeof compareShortfalls>[0][number];

const at = (day: number): string => `2026-03-${String(day).padStart(2, '0')}T07:00:00-05:00`;

function shortOf(component: string, quantity: number, from: number, to: number): Shortfall {
  return {
    id: `${component}@${at(from)}`,
    component,
    name: component,
    from: at(from),
    to: at(to),
    quantity,
    stock: 0,
    held: quantity,
    canBeHired: true,
    hireCents: 0,
    turns: [],
    loose: [],
    restsOn: 'counted',
    restsOnDate: null,
    restsOnOld: false,
  };
}

describe('shortfalls before and after a move', () => {
  test('the same one is neither new nor gone nor changed, whoever holds the pieces', () => {
    const was = shortOf('LK', 4, 2, 3);
    const is = { ...was, turns: [{ id: 'W1/A1', pour: 'W1', design: 'GA', pieces: 4 }] };
    expect(compareShortfalls([was], [is])).toEqual({
      newShortfalls: [],
      goneShortfalls: [],
      changedShortfalls: [],
    });
  });

  test('of another size, or longer, is changed', () => {
    const was = [shortOf('LK', 4, 2, 3), shortOf('BR', 1, 2, 3)];
    const is = [shortOf('LK', 6, 2, 3), shortOf('BR', 1, 2, 4)];
    expect(compareShortfalls(was, is)).toMatchObject({
      newShortfalls: [],
      goneShortfalls: [],
      changedShortfalls: [
        { before: { quantity: 4 }, after: { quantity: 6 } },
        { before: { to: at(3) }, after: { to: at(4) } },
      ],
    });
  });

  test('of another week, or of another component, is gone and new', () => {
    const was = [shortOf('LK', 4, 2, 3)];
    const is = [shortOf('LK', 4, 9, 10), shortOf('BR', 4, 2, 3)];
    expect(compareShortfalls(was, is)).toEqual({
      newShortfalls: is,
      goneShortfalls: was,
      changedShortfalls: [],
    });
  });

  test('one that only ends where the other begins is not the same', () => {
    const result = compareShortfalls([shortOf('LK', 4, 2, 3)], [shortOf('LK', 4, 3, 4)]);
    expect(result.newShortfalls).toHaveLength(1);
    expect(result.goneShortfalls).toHaveLength(1);
  });
});
