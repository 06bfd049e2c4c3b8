// Takes an exception out of the working calendar: the date is as usual again.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { calendarException } from '../plan/plan-changes.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const calendarRemove = command({
  name: 'calendar.remove',
  input: z.strictObject({ commandId, job: code, id: z.string() }),
  /** What it was, so that it can be entered again. */
  output: z.strictObject({ removed: calendarException }),
  run: async (book, { job, id }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const kept = (await book.jobEntries(job, 'calendar-exception')).find((each) => each.id === id);
    if (kept === undefined)
      return refuse('unknown-exception', `The calendar of job ${job} has no exception ${id}.`, {
        field: 'id',
        hint: 'Maybe it was taken out already.',
      });
    await book.removeJobEntry({ job, kind: 'calendar-exception', id });
    return answer({ removed: kept.entry });
  },
});
