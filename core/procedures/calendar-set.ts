// Enters an exception of the working calendar: a day lost, a holiday, a Saturday, a night. The same day off, or extra work
// from the same hour on, is entered once: the later word counts.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { calendarException, type CalendarException } from '../plan/plan-changes.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const calendarSet = command({
  name: 'calendar.set',
  input: z.strictObject({ commandId, job: code, exception: calendarException }),
  output: z.strictObject({ id: z.string(), exception: calendarException }),
  run: async (book, { job, exception }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    if (exception.kind === 'extra' && exception.start === exception.end)
      return refuse('no-hours', `Work from ${exception.start} to ${exception.end} has no hours.`, {
        field: 'exception.end',
        hint: 'Maybe the end is another hour; before the start it is on the next day.',
      });
    const kept = await book.jobEntries(job, 'calendar-exception');
    const same = kept.find(({ entry }) => keyOf(entry) === keyOf(exception));
    const id = same?.id ?? keyOf(exception);
    await book.putJobEntry({ job, kind: 'calendar-exception', id }, exception);
    return answer({ id, exception });
  },
});

function keyOf(exception: CalendarException): string {
  return exception.kind === 'off' ? `off ${exception.date}` : `extra ${exception.date} ${exception.start}`;
}
