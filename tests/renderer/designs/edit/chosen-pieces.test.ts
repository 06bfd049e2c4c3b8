import { describe, expect, test } from 'vitest';
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import {
  besideChosen,
  copied,
  idsOf,
  putDown,
  selectionOf,
} from '../../../../renderer/screens/designs/edit/chosen-pieces.ts';
import { draftPieces } from '../../../../renderer/screens/designs/edit/draft-pieces.ts';

const sizes = new Map([['P', { widthNm: 30, heightNm: 80 }]]);
/** 30, a filler of 5, 30: 65 wide; one more panel above the first. */
const gang: DesignGeometry = {
  panels: [
    { panel: 'P', xNm: 0, yNm: 0, onSide: false },
    { panel: 'P', xNm: 35, yNm: 0, onSide: false },
    { panel: 'P', xNm: 0, yNm: 80, onSide: false },
  ],
  fillers: [{ xNm: 30, yNm: 0, widthNm: 5, heightNm: 80 }],
  edges: { left: 'open', right: 'open' },
  equalised: false,
};
const pieces = draftPieces(gang, sizes);

describe('chosen pieces', () => {
  test('as places in the lists, and back', () => {
    expect(selectionOf(['panel-2', 'filler-0'])).toEqual({ panels: [2], fillers: [0] });
    expect(idsOf({ panels: [2], fillers: [0] })).toEqual(['panel-2', 'filler-0']);
  });
  test('copied and put down 100 further on, they are added and are what is chosen', () => {
    const { geometry, chosen } = putDown(gang, copied(gang, ['panel-1', 'filler-0']), { xNm: 100, yNm: 0 });
    expect(chosen).toEqual(['panel-3', 'filler-1']);
    expect([geometry.panels[3]?.xNm, geometry.fillers[1]?.xNm]).toEqual([135, 130]);
  });
});

describe('where a piece from the tray comes to stand', () => {
  test('at the origin of an empty design', () => expect(besideChosen([], [])).toEqual({ xNm: 0, yNm: 0 }));
  test('at the end of the lowest row', () => expect(besideChosen(pieces, [])).toEqual({ xNm: 65, yNm: 0 }));
  test('beside what is chosen, on its height', () => {
    expect(besideChosen(pieces, ['panel-2'])).toEqual({ xNm: 30, yNm: 80 });
  });
});
