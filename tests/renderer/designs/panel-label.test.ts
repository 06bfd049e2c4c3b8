import { describe, expect, test } from 'vitest';
import { panelLabel } from '../../../renderer/screens/designs/panel-label.ts';

const size = `3'-0" × 8'-0"`;
const box = (width: number, height: number) => ({ x: 0, y: 0, width, height });

describe('how a panel is written on', () => {
  test('wide enough for 13 letters: code and size level', () => {
    expect(panelLabel(box(120, 300), 'P836', size, [])).toMatchObject({
      turned: false,
      lines: ['P836', size],
    });
  });
  test('40 px wide and 300 high: code and size turned', () => {
    expect(panelLabel(box(40, 300), 'P836', size, [])).toMatchObject({ turned: true, lines: ['P836', size] });
  });
  test('a hole that the turned size would hide leaves the code alone', () => {
    const hole = { x: 15, y: 45, width: 10, height: 10 };
    expect(panelLabel(box(40, 110), 'P836', size, [hole])?.lines).toEqual(['P836']);
  });
  test('too small for the code: nothing', () => {
    expect(panelLabel(box(12, 12), 'P836', size, [])).toBeUndefined();
  });
});
