// The working calendar as it is entered: days of the week, hours of the shift, days off, in a time zone.
import { z } from 'zod';
import { refuse, type Refusal } from '../answer.ts';
import { knowsTimeZone } from './days.ts';

const clockTime = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/u, 'A time of day is written as 07:00 to 23:59')
  .meta({ description: 'A time of day, 24 hours, as 07:00' });

export const shiftsInput = z.strictObject({
  timeZone: z.string().min(1).meta({ description: 'A time zone such as America/New_York' }),
  days: z.array(z.int().min(1).max(7)).meta({ description: 'Working days of the week; 1 is Monday' }),
  start: clockTime,
  end: clockTime,
  off: z.array(z.iso.date()).optional().meta({ description: 'Dates on which nobody works' }),
  extra: z
    .array(z.strictObject({ date: z.iso.date(), start: clockTime, end: clockTime }))
    .optional()
    .meta({
      description: 'Work besides the shift of the date; an end not after the start is on the next day',
    }),
});

export type Shifts = z.output<typeof shiftsInput>;

/** The minute of the day of `HH:MM`. */
export function minuteOfDay(time: string): number {
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
}

/**
 * What is wrong with a calendar, if anything: no working day, a shift that does not end after it began
 * (only extra work may run past midnight), a zone nobody knows. `field` is the path of the calendar.
 */
export function checkShifts(shifts: Shifts, field = 'shifts'): Refusal | undefined {
  if (!knowsTimeZone(shifts.timeZone)) {
    return refuse('unknown-time-zone', `The time zone "${shifts.timeZone}" is not known.`, {
      field: `${field}.timeZone`,
      hint: 'Maybe a name such as America/New_York or Europe/Paris is meant.',
    }).error;
  }
  if (shifts.days.length === 0) {
    return refuse('no-working-day', 'The calendar has no working day.', {
      field: `${field}.days`,
      hint: 'Maybe [1,2,3,4,5] is meant: Monday to Friday.',
    }).error;
  }
  if (minuteOfDay(shifts.start) >= minuteOfDay(shifts.end)) {
    return refuse(
      'shift-without-hours',
      `The shift from ${shifts.start} to ${shifts.end} does not end after it begins on the same day.`,
      {
        field: `${field}.end`,
        hint: 'Maybe start and end are swapped; work past midnight is entered as extra work of its date.',
      },
    ).error;
  }
  return undefined;
}
