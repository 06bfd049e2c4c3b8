import { describe, expect, test } from 'vitest';
import { instantText } from '../../core/plan/local-time.ts';
import { movePour } from '../../core/plan/move-pour.ts';
import { pourTimes } from '../../core/plan/pour-times.ts';
import type { Pour } from '../../core/plan/pours.ts';
import { job, pourOf } from './pours-for-tests.ts';

const text = (ms: number): string => instantText(ms, job.timeZone);
const times = (changes: Partial<Pour>) => pourTimes(pourOf(changes), job);

describe('strip times', () => {
  test('strength that is met in the shift is stripped then: 12:00 and 24 hours is 12:00', () => {
    expect(text(times({}).stripFrom)).toBe('2026-03-05T12:00:00-05:00');
  });

  test('strength met at 16:00, after the shift, waits for 07:00 of the next shift', () => {
    const at = times({ finishAt: '2026-03-04T16:00:00-05:00' });
    expect(text(at.ready)).toBe('2026-03-05T16:00:00-05:00');
    expect(text(at.stripFrom)).toBe('2026-03-06T07:00:00-05:00');
    expect(text(at.stripTo)).toBe('2026-03-06T10:00:00-05:00');
  });

  test('strength met at 15:30 exactly, when the shift is over, waits as well', () => {
    expect(text(times({ finishAt: '2026-03-04T15:30:00-05:00' }).stripFrom)).toBe(
      '2026-03-06T07:00:00-05:00',
    );
  });

  test('strength met on Friday evening waits for Monday', () => {
    expect(text(times({ finishAt: '2026-03-05T18:00:00-05:00' }).stripFrom)).toBe(
      '2026-03-09T07:00:00-04:00',
    );
  });

  // 8 March 2026, 02:00: the clocks of New York go forward (IANA time zone database).
  test('curing counts elapsed hours: over the lost hour 48 hours end an hour later by the clock', () => {
    const at = times({ finishAt: '2026-03-07T12:00:00-05:00', stripMinimumH: 48 });
    expect(text(at.ready)).toBe('2026-03-09T13:00:00-04:00');
  });

  test('setting and stripping run on into the next shift: 10 shift hours from 07:00 end at 08:30', () => {
    const at = times({ stripH: 10, finishAt: '2026-03-04T07:00:00-05:00' });
    expect(text(at.stripFrom)).toBe('2026-03-05T07:00:00-05:00');
    expect(text(at.stripTo)).toBe('2026-03-06T08:30:00-05:00');
  });

  test('pieces are ready again 16 clock hours of cleaning after the strip', () => {
    const at = times({});
    expect(text(at.stripTo)).toBe('2026-03-05T15:00:00-05:00');
    expect(text(at.free)).toBe('2026-03-06T07:00:00-05:00');
  });
});

describe('moving a pour', () => {
  test('a working day from Friday is Monday, at the same time of day over the clock change', () => {
    const moved = movePour(pourOf({ finishAt: '2026-03-06T14:00:00-05:00' }), 1, job);
    expect(moved.finishAt).toBe('2026-03-09T14:00:00-04:00');
    expect(moved.sides[0].setAt).toBe('2026-03-03T07:00:00-05:00');
  });

  test('there and back again is where it was', () => {
    const pour = pourOf();
    for (const days of [1, 2, 5, 13]) expect(movePour(movePour(pour, days, job), -days, job)).toEqual(pour);
  });

  test('a day off is passed over', () => {
    const holiday = { ...job, shifts: { ...job.shifts, off: ['2026-03-05'] } };
    expect(movePour(pourOf(), 1, holiday).finishAt).toBe('2026-03-06T12:00:00-05:00');
  });

  test('what others promised does not move', () => {
    const gates = [
      { name: 'steel', who: 'steel crew', before: 'close', promised: '2026-03-03', done: false },
    ] as const;
    expect(movePour(pourOf({ gates }), 3, job).gates).toEqual(gates);
  });
});
