// Rails that the pick needs and rails that placing needs: what is moved when stands on the sheet, to be ticked.
import { expect, test } from 'vitest';
import type { RailMove } from '../../core/gang/rail-clash.ts';
import { sheetUnits } from '../../core/sheets/drawn-gang.ts';
import { railMovesPart } from '../../core/sheets/rail-moves-part.ts';
import { withClass, wordsOf } from './read-tree.ts';

const footNm = 304_800_000;
const level = { direction: 'level', xNm: 0, yNm: 4 * footNm } as const;
const upright = { direction: 'upright', xNm: 6 * footNm, yNm: 0 } as const;
const moves: readonly RailMove[] = [
  { step: 'before-the-pour', component: 'R8', from: level, to: upright },
  { step: 'before-the-pour', component: 'R6', from: level, to: null },
  { step: 'before-the-pick', component: 'R8', from: upright, to: level },
  { step: 'before-the-pick', component: 'R6', from: null, to: level },
];

test('before the pick stands first, then before the pour, a line a rail', () => {
  const parts = railMovesPart(moves, sheetUnits('us'));
  expect(parts.map((part) => wordsOf(withClass(part, 'part-name')[0]!))).toEqual([
    'Move rails before the pick',
    'Move rails before the pour',
  ]);
  expect(parts.map((part) => withClass(part, 'tick-line').map((line) => wordsOf(line)))).toEqual([
    [
      `R8: from upright, 6'-0" along, 0" up to level, 0" along, 4'-0" up.`,
      `R6: put on level, 0" along, 4'-0" up.`,
    ],
    [
      `R8: from level, 0" along, 4'-0" up to upright, 6'-0" along, 0" up.`,
      `R6: take off, level, 0" along, 4'-0" up.`,
    ],
  ]);
});

test('where no rail is moved there is no such part', () => {
  expect(railMovesPart([], sheetUnits('us'))).toEqual([]);
});
