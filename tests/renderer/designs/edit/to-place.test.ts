import { describe, expect, test } from 'vitest';
import { moveToPlace, toNextEdge } from '../../../../renderer/screens/designs/edit/to-place.ts';

const at = (xNm: number, yNm: number, widthNm = 30, heightNm = 80) => ({ xNm, yNm, widthNm, heightNm });
const move = (dxNm: number, dyNm: number) =>
  moveToPlace([at(200, 0)], [at(0, 0), at(30, 0)], { dxNm, dyNm }, 4, 10);

describe('where a dragged piece goes', () => {
  test('its left edge to the right edge of a neighbour 3 away: 60, with a guide there', () => {
    expect(move(-137, 0)).toMatchObject({ dxNm: -140 });
    expect(move(-137, 0).guides).toContainEqual(expect.objectContaining({ direction: 'upright', atNm: 60 }));
  });
  test('5 away is beyond its reach of 4: to the next whole step instead', () => {
    expect(move(-134, 40)).toEqual({ dxNm: -130, dyNm: 40, guides: [] });
  });
  test('its top to the top of a neighbour, while it is free along', () => {
    expect(move(53, 2)).toMatchObject({ dxNm: 50, dyNm: 0 });
    expect(move(53, 2).guides).toContainEqual(expect.objectContaining({ direction: 'level', atNm: 80 }));
  });
  test('the nearer of two edges', () => {
    const two = moveToPlace([at(100, 0)], [at(57, 0, 1), at(60, 0, 2)], { dxNm: -40, dyNm: 0 }, 4, 10);
    expect(two.dxNm).toBe(-40);
  });
  test('several pieces go together by their outermost edges', () => {
    const pair = moveToPlace([at(200, 0), at(230, 0)], [at(0, 0)], { dxNm: -172, dyNm: 0 }, 4, 10);
    expect(pair.dxNm).toBe(-170);
  });
  test('nothing taken hold of goes as it is told', () => {
    expect(moveToPlace([], [], { dxNm: 3, dyNm: 4 }, 4, 10)).toEqual({ dxNm: 3, dyNm: 4, guides: [] });
  });
});

describe('to the next edge by key', () => {
  const still = [at(0, 0), at(30, 0)];
  test('left from 200: its left edge comes to 60', () =>
    expect(toNextEdge([at(200, 0)], still, 'left')).toBe(-140));
  test('up from 0: its bottom comes to 80', () => expect(toNextEdge([at(200, 0)], still, 'up')).toBe(80));
  test('right of everything there is none', () => expect(toNextEdge([at(200, 0)], still, 'right')).toBe(0));
});
