import { describe, expect, test } from 'vitest';
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import {
  around,
  draftPieces,
  nextPiece,
  within,
} from '../../../../renderer/screens/designs/edit/draft-pieces.ts';

const sizes = new Map([['P', { widthNm: 3, heightNm: 8 }]]);
/** Two panels 3 by 8 with a filler of 1 between them, and one on its side, 8 by 3, above. */
const geometry: DesignGeometry = {
  panels: [
    { panel: 'P', xNm: 4, yNm: 0, onSide: false },
    { panel: 'P', xNm: 0, yNm: 0, onSide: false },
    { panel: 'P', xNm: -1, yNm: 8, onSide: true },
    { panel: 'gone', xNm: 90, yNm: 0, onSide: false },
  ],
  fillers: [{ xNm: 3, yNm: 0, widthNm: 1, heightNm: 8 }],
  edges: { left: 'open', right: 'open' },
  equalised: false,
};
const pieces = draftPieces(geometry, sizes);

describe('pieces of an open design', () => {
  test('a panel on its side is 8 wide and 3 high; one of an unknown code is not drawn', () => {
    expect(pieces.map(({ id, widthNm, heightNm }) => `${id} ${widthNm}x${heightNm}`)).toEqual([
      'panel-0 3x8',
      'panel-1 3x8',
      'panel-2 8x3',
      'filler-0 1x8',
    ]);
  });
  test('around all of them: 8 wide from -1, 11 high', () => {
    expect(around(pieces)).toEqual({ xNm: -1, yNm: 0, widthNm: 8, heightNm: 11 });
    expect(around([])).toBeUndefined();
  });
  test('a box drawn from the upper right to the lower left chooses what it reaches into', () => {
    expect(within(pieces, { xNm: 3.5, yNm: 7, widthNm: -2, heightNm: -3 })).toEqual(['panel-1', 'filler-0']);
  });
  test('a box that only touches an edge does not choose', () => {
    expect(within(pieces, { xNm: 7, yNm: 0, widthNm: 5, heightNm: 8 })).toEqual([]);
  });
});

describe('from piece to piece', () => {
  test('from the bottom row, left to right, then up, then around', () => {
    const steps = [nextPiece(pieces, [], 1)];
    for (let step = 0; step < 4; step += 1) steps.push(nextPiece(pieces, steps.slice(-1) as ['panel-0'], 1));
    expect(steps).toEqual(['panel-1', 'filler-0', 'panel-0', 'panel-2', 'panel-1']);
  });
  test('backwards from nothing begins at the end', () => {
    expect(nextPiece(pieces, [], -1)).toBe('panel-2');
  });
  test('no pieces, no next', () => expect(nextPiece([], [], 1)).toBeUndefined());
});
