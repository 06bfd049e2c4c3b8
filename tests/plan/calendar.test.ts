// Shift arithmetic against hand-worked facts; the clock change in New York on Sunday 8 March 2026 (02:00 to
// 03:00) is that of the IANA time zone database.
import { describe, expect, test } from 'vitest';
import {
  calendarOf,
  checkShifts,
  inShift,
  nextShiftStart,
  shiftsBetween,
  workAfter,
  workBefore,
  type Shifts,
} from '../../core/plan/calendar.ts';
import { decimalOf, unitsOfHours } from '../../core/plan/hours.ts';
import { numbersFrom } from '../bench/jobs.ts';

const weekdays: Shifts = {
  timeZone: 'America/New_York',
  days: [1, 2, 3, 4, 5],
  start: '07:00',
  end: '15:30',
};
const nights: Shifts = { timeZone: 'America/New_York', days: [7], start: '01:00', end: '05:00' };

function ms(text: string): number {
  return Date.parse(text);
}

function iso(at: number): string {
  return new Date(at).toISOString();
}

describe('work by shifts of 07:00 to 15:30, Monday to Friday, in New York', () => {
  test('two hours after Friday 14:30 are done on Monday at 08:00, over the clock change', () => {
    expect(iso(workAfter(ms('2026-03-06T14:30:00-05:00'), 2, weekdays))).toBe(
      iso(ms('2026-03-09T08:00:00-04:00')),
    );
  });

  test('two hours before Monday 08:00 begin on Friday at 14:30', () => {
    expect(iso(workBefore(ms('2026-03-09T08:00:00-04:00'), 2, weekdays))).toBe(
      iso(ms('2026-03-06T14:30:00-05:00')),
    );
  });

  test('work that ends a shift ends at 15:30, not the next morning; work that begins one begins at 07:00, not the evening before', () => {
    expect(iso(workAfter(ms('2026-03-03T13:30:00-05:00'), 2, weekdays))).toBe(
      iso(ms('2026-03-03T15:30:00-05:00')),
    );
    expect(iso(workBefore(ms('2026-03-03T09:00:00-05:00'), 2, weekdays))).toBe(
      iso(ms('2026-03-03T07:00:00-05:00')),
    );
  });

  test('no hours are the instant itself, even at night', () => {
    const night = ms('2026-03-03T23:12:34.5-05:00');
    expect(workAfter(night, 0, weekdays)).toBe(night);
    expect(workBefore(night, 0, weekdays)).toBe(night);
  });

  test('a day off is no working day: 1 h after Tuesday 15:30 with Wednesday off is Thursday 08:00', () => {
    const off = { ...weekdays, off: ['2026-03-04'] };
    expect(iso(workAfter(ms('2026-03-03T15:30:00-05:00'), 1, off))).toBe(
      iso(ms('2026-03-05T08:00:00-05:00')),
    );
  });

  test('the end of a shift is no longer in it; the next start after 15:30 on Friday is Monday 07:00', () => {
    expect(inShift(ms('2026-03-06T15:29:59-05:00'), weekdays)).toBe(true);
    expect(inShift(ms('2026-03-06T15:30:00-05:00'), weekdays)).toBe(false);
    expect(iso(nextShiftStart(ms('2026-03-06T15:30:00-05:00'), weekdays))).toBe(
      iso(ms('2026-03-09T07:00:00-04:00')),
    );
    expect(iso(nextShiftStart(ms('2026-03-06T07:00:00-05:00'), weekdays))).toBe(
      iso(ms('2026-03-06T07:00:00-05:00')),
    );
  });

  test('four hundred and twenty-five hours are fifty shifts of 8.5 h: ten weeks', () => {
    expect(iso(workAfter(ms('2026-03-02T07:00:00-05:00'), 425, weekdays))).toBe(
      iso(ms('2026-05-08T15:30:00-04:00')),
    );
  });

  test('the shifts between Friday noon and Monday noon are two', () => {
    const found = shiftsBetween(ms('2026-03-06T12:00:00-05:00'), ms('2026-03-09T12:00:00-04:00'), weekdays);
    expect(found.map(({ from, to }) => `${iso(from)} ${iso(to)}`)).toEqual([
      '2026-03-06T12:00:00.000Z 2026-03-06T20:30:00.000Z',
      '2026-03-09T11:00:00.000Z 2026-03-09T19:30:00.000Z',
    ]);
  });
});

test('a shift over the skipped hour is three hours long: 3 h after its start is its end, 3.5 h reach into the next week', () => {
  const start = ms('2026-03-08T01:00:00-05:00');
  expect(iso(workAfter(start, 3, nights))).toBe(iso(ms('2026-03-08T05:00:00-04:00')));
  expect(iso(workAfter(start, 3.5, nights))).toBe(iso(ms('2026-03-15T01:30:00-04:00')));
});

test('a shift over the doubled hour of 1 November 2026 is five hours long', () => {
  const start = ms('2026-11-01T01:00:00-04:00');
  expect(iso(workAfter(start, 5, nights))).toBe(iso(ms('2026-11-01T05:00:00-05:00')));
});

test('work there and back again comes to where it began, on 2,000 random instants in shifts', () => {
  const next = numbersFrom(7);
  const calendar = calendarOf(weekdays);
  for (let round = 0; round < 2000; round += 1) {
    const start = calendar.nextShiftStart(ms('2026-02-01T00:00:00Z') + Math.floor(next() * 1e10));
    const at = start + 1 + Math.floor(next() * 30_000_000);
    const work = 1 + Math.floor(next() * 3e8);
    expect(calendar.workBefore(calendar.workAfter(at, work), work)).toBe(at);
  }
});

describe('calendars that are refused', () => {
  test.each([
    ['no-working-day', { ...weekdays, days: [] }, 'shifts.days'],
    ['shift-without-hours', { ...weekdays, start: '15:30', end: '07:00' }, 'shifts.end'],
    ['shift-without-hours', { ...weekdays, start: '07:00', end: '07:00' }, 'shifts.end'],
    ['unknown-time-zone', { ...weekdays, timeZone: 'Nowhere/Here' }, 'shifts.timeZone'],
  ])('%s', (code, shifts, field) => {
    expect(checkShifts(shifts)).toMatchObject({ code, field });
  });

  test('a calendar of weekdays in New York is not refused', () => {
    expect(checkShifts(weekdays)).toBeUndefined();
  });
});

describe('hours as whole units of time', () => {
  test('a tenth of an hour is 360,000 ms, exactly; three tenths are 1,080,000', () => {
    expect(unitsOfHours(0.1, 1)).toBe(360_000);
    expect(unitsOfHours(0.3, 1)).toBe(1_080_000);
  });

  test('0.1 + 0.2 as a computer adds them is a little over three tenths, and is rounded up', () => {
    expect(unitsOfHours(0.1 + 0.2, 1)).toBe(1_080_001);
  });

  test('a number is the shortest decimal that writes it: 1e-7 has seven places, 25e20 none', () => {
    expect(decimalOf(1e-7)).toEqual({ digits: 1n, places: 7 });
    expect(decimalOf(25e20)).toEqual({ digits: 25n * 10n ** 20n, places: 0 });
  });
});
