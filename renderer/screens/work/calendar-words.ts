// Exceptions of the calendar in words, and those that one press enters for a day.
import type { Input, Output } from '../../client/shapes.ts';
import type { WorkDay } from './work-words.ts';

export type Exception = Input<'calendar.set'>['exception'];
type Shifts = Output<'calendar.list'>['shifts'];

const offWords = { weather: 'lost to weather', holiday: 'holiday', other: 'nobody works' } as const;
const extraWords = { saturday: 'worked', night: 'night', other: 'longer day' } as const;

export function exceptionWords(exception: Exception): string {
  return exception.kind === 'off'
    ? offWords[exception.reason]
    : `${extraWords[exception.reason]} ${exception.start}-${exception.end}`;
}

/** Of a worked day that it is lost, longer or has a night; of another that it is worked. */
export function offered(
  { date, working }: Pick<WorkDay, 'date' | 'working'>,
  { start, end }: Pick<Shifts, 'start' | 'end'>,
): readonly { readonly name: string; readonly exception: Exception }[] {
  const off = (reason: 'weather' | 'holiday'): Exception => ({ kind: 'off', date, reason, remark: null });
  const extra = (reason: 'saturday' | 'night' | 'other', from: string, to: string): Exception => ({
    kind: 'extra',
    date,
    start: from,
    end: to,
    reason,
    remark: null,
  });
  const night = { name: 'Night 20:00-02:00', exception: extra('night', '20:00', '02:00') };
  if (!working)
    return [
      { name: `Work ${start}-12:00`, exception: extra('saturday', start, start < '12:00' ? '12:00' : end) },
      { name: `Work ${start}-${end}`, exception: extra('saturday', start, end) },
      night,
    ];
  return [
    { name: 'Lost to weather', exception: off('weather') },
    { name: 'Holiday', exception: off('holiday') },
    { name: 'Two hours longer', exception: extra('other', end, hoursLater(end, 2)) },
    night,
  ];
}

function hoursLater(time: string, hours: number): string {
  const hour = (Number(time.slice(0, 2)) + hours) % 24;
  return `${String(hour).padStart(2, '0')}${time.slice(2)}`;
}
