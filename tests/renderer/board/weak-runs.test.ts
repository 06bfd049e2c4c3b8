import { expect, test } from 'vitest';
import type { DayBox } from '../../../renderer/screens/board/day-scale.ts';
import { weakRuns } from '../../../renderer/screens/board/weak-runs.ts';
import { madeDays } from './made-board.ts';

test('days next to one another that rest on the same figures are one run, of other figures another', () => {
  const weak: readonly (readonly string[])[] = [['LK'], ['LK'], [], ['LK'], ['LK', 'R8'], ['LK', 'R8']];
  const days = madeDays('2026-03-09', weak.length).map((day, index): DayBox => ({
    date: day.date,
    working: day.working,
    x: index * 80,
    width: 80,
    day: { ...day, restsOnWeak: [...(weak[index] ?? [])] },
  }));
  expect(
    weakRuns(days).map(({ from, to, x, width, components }) => [
      from.slice(8),
      to.slice(8),
      x,
      width,
      components.join(),
    ]),
  ).toEqual([
    ['09', '10', 0, 160, 'LK'],
    ['12', '12', 240, 80, 'LK'],
    ['13', '14', 320, 160, 'LK,R8'],
  ]);
});
