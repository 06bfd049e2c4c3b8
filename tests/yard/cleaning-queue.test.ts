import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../core/plan/random.ts';
import { type CleaningPace, cleaningQueue, type ToClean } from '../../core/yard/cleaning-queue.ts';

const hour = 3_600_000;
const belowFrom = (next: () => number) => (below: number) => Math.floor(next() * below);
const day = 24 * hour;
/** Shifts of every day from 7 to 15:30, in hours since an unnamed midnight. */
const perDay = (pieces: number): CleaningPace => ({
  how: 'by-the-day',
  perDay: pieces,
  shiftEndingAfter: (ms) => {
    const today = Math.floor(ms / day) * day;
    const from = (ms < today + 15.5 * hour ? today : today + day) + 7 * hour;
    return { from, to: from + 8.5 * hour };
  },
});
const lot = (quantity: number, hours: number): ToClean => ({ quantity, sinceMs: hours * hour });
const due = (lots: readonly ToClean[], pace: CleaningPace, nowHours = 0) =>
  cleaningQueue(lots, pace, nowHours * hour).map(({ quantity, dueMs }) => [
    quantity,
    dueMs === null ? null : dueMs / hour,
  ]);

describe('by the clock', () => {
  const pace: CleaningPace = { how: 'by-the-clock', cleanMs: 15 * hour };

  test('each quantity is due 15 hours after it became dirty; past that, nobody knows when', () => {
    expect(due([lot(4, 8), lot(6, 9.5)], pace, 8)).toEqual([
      [4, 23],
      [6, 24.5],
    ]);
    expect(due([lot(4, 8)], pace, 23)).toEqual([[4, null]]);
  });
});

describe('so many in a working day', () => {
  test('40 at 17 a day: 17 by the end of each of two shifts, the last six by that of the third', () => {
    expect(due([lot(40, 6)], perDay(17))).toEqual([
      [17, 15.5],
      [17, 39.5],
      [6, 63.5],
    ]);
  });

  test('first in, first out: what came second waits for the first, whatever the order of the list', () => {
    expect(due([lot(10, 8), lot(12, 7)], perDay(17))).toEqual([
      [12, 15.5],
      [5, 15.5],
      [5, 39.5],
    ]);
  });

  test('what comes in the middle of a shift is begun then, and none is left half clean overnight', () => {
    // From 15:00 there is time for one piece at half an hour each, and the next begins at 7 the day after.
    expect(due([lot(2, 15)], perDay(17))).toEqual([
      [1, 15.5],
      [1, 39.5],
    ]);
    expect(due([lot(1, 15.25)], perDay(17))).toEqual([[1, 39.5]]);
  });

  test('seven a day are seven, though an hour and a seventh does not come out even', () => {
    expect(due([lot(8, 6)], perDay(7))).toEqual([
      [7, 15.5],
      [1, 39.5],
    ]);
  });

  test('nothing that is still dirty was clean before now', () => {
    expect(due([lot(1, 0)], perDay(17), 100)).toEqual([[1, 111.5]]);
  });

  test('what would take more than a thousand shifts is due on no day', () => {
    const parts = due([lot(1200, 0)], perDay(1));
    expect(parts).toHaveLength(1001);
    expect(parts.at(-1)).toEqual([200, null]);
  });

  test('never more in one shift than a day has, over 200 random queues', () => {
    const random = belowFrom(randomFrom(20_260_302));
    for (let round = 0; round < 200; round += 1) {
      const most = 1 + random(40);
      const lots = Array.from({ length: 1 + random(8) }, () => lot(1 + random(60), random(300) / 2));
      const parts = cleaningQueue(lots, perDay(most), random(200) * hour);
      const byDay = Map.groupBy(parts, ({ dueMs }) => Math.floor((dueMs ?? 0) / day));
      for (const [, there] of byDay)
        expect(there.reduce((sum, { quantity }) => sum + quantity, 0)).toBeLessThanOrEqual(most);
      const cleaned = parts.reduce((sum, { quantity }) => sum + quantity, 0);
      expect(cleaned).toBe(lots.reduce((sum, { quantity }) => sum + quantity, 0));
      for (const { lot: of, dueMs } of parts) expect(dueMs ?? 0).toBeGreaterThan(of.sinceMs);
    }
  });
});
