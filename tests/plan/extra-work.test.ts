// Extra work in a calendar: by hand across midnight, weekends and the clock changes of New York in 2026 (8 March and
// 1 November, IANA time zone database), and 300 made calendars against the second reading in reference.ts.
import { describe, expect, test } from 'vitest';
import {
  checkShifts,
  inShift,
  nextShiftStart,
  shiftsBetween,
  workAfter,
  workBefore,
  type Shifts,
} from '../../core/plan/calendar.ts';
import { dateOfDay, dayOfDate } from '../../core/plan/days.ts';
import { shiftsWith } from '../../core/plan/exceptions.ts';
import { localDate } from '../../core/plan/local-time.ts';
import { movePour } from '../../core/plan/move-pour.ts';
import { stepsOf } from '../../core/plan/steps.ts';
import { workedDayFrom, workedDays, workingDaysBetween } from '../../core/plan/working-days.ts';
import { numbersFrom } from '../bench/jobs.ts';
import { job, pourOf } from './pours-for-tests.ts';
import { shiftHoursBetween, shiftStretches } from './reference.ts';

const weekdays: Shifts = {
  timeZone: 'America/New_York',
  days: [1, 2, 3, 4, 5],
  start: '07:00',
  end: '15:30',
};
const ms = (text: string): number => Date.parse(text);
const iso = (at: number): string => new Date(at).toISOString();
const sameMoment = (at: number, text: string): void => expect(iso(at)).toBe(iso(ms(text)));
const withExtra = (...extra: NonNullable<Shifts['extra']>): Shifts => ({ ...weekdays, extra });

const nightHours = (date: string): number => {
  const evening = ms(`${date}T23:00:00Z`);
  const night = withExtra({ date, start: '20:00', end: '03:00' });
  return shiftsBetween(evening, evening + 12 * 3_600_000, night)
    .map((each) => (each.to - each.from) / 3_600_000)
    .reduce((sum, hours) => sum + hours, 0);
};

describe('extra work', () => {
  test('two hours after Friday 14:30 end on a worked Saturday at 08:00, and reach back from there to Friday 14:30', () => {
    const saturday = withExtra({ date: '2026-03-07', start: '07:00', end: '12:00' });
    sameMoment(workAfter(ms('2026-03-06T14:30:00-05:00'), 2, saturday), '2026-03-07T08:00:00-05:00');
    sameMoment(workBefore(ms('2026-03-07T08:00:00-05:00'), 2, saturday), '2026-03-06T14:30:00-05:00');
    sameMoment(nextShiftStart(ms('2026-03-06T16:00:00-05:00'), saturday), '2026-03-07T07:00:00-05:00');
  });

  test('a night from 20:00 to 03:00 has seven hours, eight when the clock goes back and six when it skips one', () => {
    expect(['2026-03-03', '2026-10-31', '2026-03-07'].map(nightHours)).toEqual([7, 8, 6]);
  });

  test('extra hours that overlap the shift count once: 06:00 to 08:00 and 15:00 to 17:30 make one shift of 11.5 h', () => {
    const long = withExtra(
      { date: '2026-03-03', start: '06:00', end: '08:00' },
      { date: '2026-03-03', start: '15:00', end: '17:30' },
      { date: '2026-03-03', start: '15:00', end: '17:30' },
    );
    expect(
      shiftsBetween(ms('2026-03-03T00:00:00-05:00'), ms('2026-03-04T00:00:00-05:00'), long).map(
        ({ from, to }) => (to - from) / 3_600_000,
      ),
    ).toEqual([11.5]);
  });

  test('a night that runs into the next shift ends where that begins: each keeps its own day', () => {
    const night = withExtra({ date: '2026-03-03', start: '22:00', end: '08:00' });
    const found = shiftsBetween(ms('2026-03-03T20:00:00-05:00'), ms('2026-03-05T00:00:00-05:00'), night);
    expect(found.map(({ from, to }) => [iso(from), iso(to)])).toEqual([
      [iso(ms('2026-03-03T22:00:00-05:00')), iso(ms('2026-03-04T07:00:00-05:00'))],
      [iso(ms('2026-03-04T07:00:00-05:00')), iso(ms('2026-03-04T15:30:00-05:00'))],
    ]);
    expect(inShift(ms('2026-03-04T07:00:00-05:00'), night)).toBe(true);
  });

  test('work after midnight of a night is a step of the evening on which it began', () => {
    const night = withExtra({ date: '2026-03-03', start: '20:00', end: '03:00' });
    const steps = stepsOf(
      [
        {
          kind: 'strip',
          from: ms('2026-03-03T23:00:00-05:00'),
          to: ms('2026-03-04T02:00:00-05:00'),
          pour: 'W1',
          toPour: null,
          designs: ['GA'],
          turns: ['W1/A1'],
        },
      ],
      { ...job, shifts: night },
    );
    expect(steps.map(({ date, hours }) => [date, hours])).toEqual([['2026-03-03', 3]]);
  });

  test('a date with extra work is a working day: Friday and one more is Saturday, and it is counted back', () => {
    const saturday = withExtra({ date: '2026-03-07', start: '07:00', end: '12:00' });
    expect(workedDays(saturday)(dayOfDate('2026-03-07'))).toBe(true);
    expect(dateOfDay(workedDayFrom(dayOfDate('2026-03-06'), 1, saturday))).toBe('2026-03-07');
    expect(workingDaysBetween(dayOfDate('2026-03-06'), dayOfDate('2026-03-09'), saturday)).toBe(2);
    const pour = pourOf({ code: 'W1' });
    const moved = (shifts: Shifts): string =>
      localDate(
        ms(movePour({ ...pour, finishAt: '2026-03-06T13:00:00-05:00' }, 1, { ...job, shifts }).finishAt),
        job.timeZone,
      );
    expect([moved(weekdays), moved(saturday)]).toEqual(['2026-03-09', '2026-03-07']);
  });

  test('a day lost to weather with a night instead has the hours of the night alone', () => {
    const shifts = shiftsWith(weekdays, [
      { kind: 'off', date: '2026-03-04', reason: 'weather', remark: null },
      { kind: 'extra', date: '2026-03-04', start: '18:00', end: '22:00', reason: 'night', remark: null },
    ]);
    const found = shiftsBetween(ms('2026-03-04T00:00:00-05:00'), ms('2026-03-05T00:00:00-05:00'), shifts);
    expect(found.map(({ from, to }) => [iso(from), iso(to)])).toEqual([
      [iso(ms('2026-03-04T18:00:00-05:00')), iso(ms('2026-03-04T22:00:00-05:00'))],
    ]);
  });

  test('a week without a working day is refused even with extra work: moving by days would find none', () => {
    expect(
      checkShifts({ ...weekdays, days: [], extra: [{ date: '2026-03-07', start: '07:00', end: '12:00' }] })
        ?.code,
    ).toBe('no-working-day');
  });
});

test('300 made calendars: hours between, work before and after, against the second reading', () => {
  const seed = Number(process.env.REGANG_TEST_SEED ?? 20_260_301);
  const next = numbersFrom(seed);
  const pick = (count: number): number => Math.floor(next() * count);
  const clock = (): string => `${String(pick(24)).padStart(2, '0')}:${['00', '15', '30', '45'][pick(4)]}`;
  const date = (): string => dateOfDay(dayOfDate('2026-02-25') + pick(24));
  let looked = 0;
  for (let round = 0; round < 300; round += 1) {
    const shifts: Shifts = {
      ...weekdays,
      off: Array.from({ length: pick(3) }, date),
      // Not into the hour that the clock skips: the second reading knows no such times.
      extra: Array.from({ length: 1 + pick(5) }, () => ({
        date: date(),
        start: clock(),
        end: clock(),
      })).filter(({ start, end }) => !start.startsWith('02') && !end.startsWith('02')),
    };
    const at = ms('2026-03-01T00:00:00Z') + pick(14 * 24 * 4) * 900_000;
    const hours = pick(160) / 4;
    const after = workAfter(at, hours, shifts);
    const before = workBefore(at, hours, shifts);
    const about = `seed ${seed}, round ${round}`;
    expect(shiftHoursBetween(shifts, at, after), about).toBe(hours);
    expect(shiftHoursBetween(shifts, before, at), about).toBe(hours);
    if (hours > 0) {
      expect(shiftHoursBetween(shifts, at, after - 1), about).toBeLessThan(hours);
      expect(shiftHoursBetween(shifts, before + 1, at), about).toBeLessThan(hours);
    }
    expect(inShift(at, shifts), about).toBe(
      shiftStretches(shifts).some(({ from, to }) => from <= at && at < to),
    );
    looked += 1;
  }
  expect(looked).toBe(300);
});
