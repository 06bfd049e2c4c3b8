import { describe, expect, test } from 'vitest';
import {
  highest,
  levelAt,
  stepPath,
  stepsOf,
  stretchesOver,
} from '../../../renderer/screens/board/step-curve.ts';

const at = (hour: number): string => `2026-03-02T${String(hour).padStart(2, '0')}:00:00Z`;
const ms = (hour: number): number => Date.parse(at(hour));
const held = stepsOf([
  { from: at(2), quantity: 10 },
  { from: at(6), quantity: 14 },
  { from: at(9), quantity: 5 },
]);
const stock = stepsOf([
  { from: at(0), quantity: 12 },
  { from: at(7), quantity: 13 },
]);

describe('a stepped curve', () => {
  test('a level holds from its instant until the next, and is 0 before the first', () => {
    expect([ms(1), ms(2), ms(5), ms(6), ms(20)].map((one) => levelAt(held, one))).toEqual([0, 10, 10, 14, 5]);
  });

  test('held over stock is 2 from 6 to 7 and 1 from 7 to 9', () => {
    expect(stretchesOver(held, stock, ms(0), ms(12))).toEqual([
      { fromMs: ms(6), toMs: ms(7), low: 12, high: 14 },
      { fromMs: ms(7), toMs: ms(9), low: 13, high: 14 },
    ]);
  });

  test('the highest of both in a window counts the level it begins with', () => {
    expect(highest([held, stock], ms(3), ms(5))).toBe(12);
    expect(highest([held, stock], ms(3), ms(7))).toBe(14);
  });

  test('the path goes level, then upright, at every step', () => {
    const path = stepPath(
      held,
      ms(4),
      ms(10),
      (one) => (one - ms(0)) / 3_600_000,
      (quantity) => quantity,
    );
    expect(path).toBe('M4 10H6V14H9V5H10');
  });
});
