import { describe, expect, test } from 'vitest';
import { labelPlace } from '../../../renderer/screens/designs/label-place.ts';

const panel = { x: 0, y: 0, width: 100, height: 200 };
const size = { width: 60, height: 20 };
const hole = (x: number, y: number) => ({ x: x - 5, y: y - 5, width: 10, height: 10 });

describe('where a panel is written on', () => {
  test('nothing in the way: in the middle, 50 and 100', () => {
    expect(labelPlace(panel, size, [])).toEqual({ x: 50, y: 100, hidden: 0 });
  });
  test('a hole in the middle moves it up to 36 %', () => {
    expect(labelPlace(panel, size, [hole(50, 100)])).toEqual({ x: 50, y: 72, hidden: 0 });
  });
  test('a hole beside the label moves nothing', () => {
    expect(labelPlace(panel, size, [hole(90, 100)]).y).toBe(100);
  });
  test('where every place hides something, the middle', () => {
    expect(labelPlace(panel, size, [{ ...panel }]).y).toBe(100);
  });
  test('a low panel keeps its label inside: 12 of a height of 24', () => {
    expect(labelPlace({ ...panel, height: 24 }, size, [hole(50, 12)]).y).toBeGreaterThanOrEqual(10);
  });
});
