// A gang's place in its wall. The wall is measured as seen from side A; who stands behind side B sees it the
// other way round, as a mirror does.
import { expect, test } from 'vitest';
import { sheetUnits } from '../../core/sheets/drawn-gang.ts';
import { seenFromBack, wallPart } from '../../core/sheets/wall-part.ts';
import { numberOf, withClass, wordsOf } from './read-tree.ts';

const footNm = 304_800_000;
const gangs = [
  { design: 'G1', atNm: 4 * footNm, widthNm: 12 * footNm, heightNm: 10 * footNm },
  { design: 'G2', atNm: 16 * footNm, widthNm: 8 * footNm, heightNm: 10 * footNm },
  { design: 'G3', atNm: 24 * footNm, widthNm: 3 * footNm, heightNm: 12 * footNm },
];

function along(side: 'A' | 'B') {
  return seenFromBack(side, gangs).map(({ design, atNm }) => [design, atNm / footNm]);
}

test('side A from its back runs as it is measured, side B the other way', () => {
  expect(along('A')).toEqual([
    ['G1', 0],
    ['G2', 12],
    ['G3', 20],
  ]);
  expect(along('B')).toEqual([
    ['G3', 0],
    ['G2', 3],
    ['G1', 11],
  ]);
});

test('seen from the back and back again is the wall as it was', () => {
  const twice = seenFromBack('B', seenFromBack('B', gangs));
  expect(twice).toEqual(seenFromBack('A', gangs));
});

test('each place of this gang is framed, on each side, and no other', () => {
  const walls = (['A', 'B'] as const).map((side) => ({
    pour: 'P1',
    pourName: 'Wall',
    side,
    gangs: [...gangs, { ...gangs[0]!, atNm: 27 * footNm }],
  }));
  const part = wallPart('G1', walls, '', sheetUnits('us'));
  expect(withClass(part, 'wall-gang')).toHaveLength(8);
  const framed = withClass(part, 'wall-this');
  expect(framed).toHaveLength(4);
  expect(withClass(part, 'wall-code-this').map(wordsOf)).toEqual(['G1', 'G1', 'G1', 'G1']);
  // The frame of the leftmost G1 on side A is at the left of the drawing, on side B too: a G1 stands at each end.
  const [ofA] = withClass(part, 'wall-block');
  const lefts = withClass(ofA!, 'wall-this').map((frame) => numberOf(frame, 'x'));
  expect(Math.min(...lefts)).toBeLessThan(6);
});
