import { describe, expect, test } from 'vitest';
import { type CleaningPace, cleaningQueue, type ToClean } from '../../core/yard/cleaning-queue.ts';

const hour = 3_600_000;
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
  test('17 a day in 8 1/2 hours is two an hour: five that wait at 6 are done at half past nine', () => {
    expect(due([lot(5, 6)], perDay(17))).toEqual([[5, 9.5]]);
  });

  test('40 at 17 a day: 17 by the end of each shift, the last six by 10 on the third day', () => {
    expect(due([lot(40, 6)], perDay(17))).toEqual([
      [17, 15.5],
      [17, 39.5],
      [6, 58],
    ]);
  });

  test('first in, first out: what came second waits for the first, whatever the order of the list', () => {
    expect(due([lot(10, 8), lot(12, 7)], perDay(17))).toEqual([
      [12, 13],
      [5, 15.5],
      [5, 33.5],
    ]);
  });

  test('what comes in the middle of a shift is begun then, and none is left half clean overnight', () => {
    // From 15:00 there is time for one piece at half an hour each, and the next begins at 7 the day after.
    expect(due([lot(2, 15)], perDay(17))).toEqual([
      [1, 15.5],
      [1, 31.5],
    ]);
    expect(due([lot(1, 15.25)], perDay(17))).toEqual([[1, 31.5]]);
  });

  test('seven a day are seven, though an hour and a seventh does not come out even', () => {
    expect(due([lot(8, 6)], perDay(7))).toEqual([
      [7, 15.5],
      // 8.5 hours / 7 = 72.857 minutes, told as whole minutes and never early.
      [1, 31 + 73 / 60],
    ]);
  });

  test('nothing that is still dirty was clean before now', () => {
    expect(due([lot(1, 0)], perDay(17), 100)).toEqual([[1, 103.5]]);
  });

  test('what would take more than a thousand shifts is due on no day', () => {
    const parts = due([lot(1200, 0)], perDay(1));
    expect(parts).toHaveLength(1001);
    expect(parts.at(-1)).toEqual([200, null]);
  });

  test('never more in one shift than a day has, over 200 random queues', () => {
    const random = randomOf(20260302);
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

/** The same numbers each time: a multiplier and an addend of our own choosing, modulo 2^31. */
function randomOf(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return Math.floor((state / 2_147_483_648) * below);
  };
}
