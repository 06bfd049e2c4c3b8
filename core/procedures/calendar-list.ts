// The working calendar of a job: its usual shift, and every exception with who entered it.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { calendarException } from '../plan/plan-changes.ts';
import { shiftsInput } from '../plan/shifts.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const calendarList = query({
  name: 'calendar.list',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    /** As entered with the job, without the exceptions. */
    shifts: shiftsInput,
    exceptions: z.array(
      z.strictObject({
        id: z.string(),
        exception: calendarException,
        at: instant.nullable(),
        who: z.string().nullable(),
      }),
    ),
  }),
  run: async (book, { job: asked }) => {
    const job = await book.job(asked);
    if (job === null) return unknownJob(asked);
    const kept = await book.jobEntries(asked, 'calendar-exception');
    const exceptions = kept.map(({ id, entry, entered }) => ({
      id,
      exception: entry,
      at: entered?.at ?? null,
      who: entered?.who ?? null,
    }));
    exceptions.sort((one, other) => (one.exception.date < other.exception.date ? -1 : 1));
    return answer({ shifts: job.shifts, exceptions });
  },
});
