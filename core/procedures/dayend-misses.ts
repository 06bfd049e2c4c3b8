// What was planned and did not happen, by week and reason; every share says of what.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { missesByWeek } from '../plan/day-end/misses.ts';
import { missWords } from '../plan/day-end/reasons.ts';
import { asData } from './as-data.ts';
import { query } from './procedure.ts';
import { code, date } from './shapes.ts';
import { reason } from './shown-day.ts';
import { unknownJob } from './unknown.ts';

export const dayendMisses = query({
  name: 'dayend.misses',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    /** The latest first. */
    weeks: z.array(
      z.strictObject({
        /** Its Monday. */
        week: date,
        daysEnded: z.int(),
        /** Steps planned for its days that were ended, and those of them that were done on their day. */
        planned: z.int(),
        done: z.int(),
        donePercentOfPlanned: z.number().nullable(),
        notDone: z.array(z.strictObject({ reason, words: z.string(), steps: z.int() })),
        /** Steps left over from earlier days, and those of them that were made up for. */
        leftOver: z.int(),
        leftOverDone: z.int(),
      }),
    ),
  }),
  run: async (book, { job }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const weeks = missesByWeek(await book.jobEntries(job, 'day-report'));
    const shown = weeks.map((week) => ({
      ...week,
      donePercentOfPlanned: week.planned === 0 ? null : Math.round((1000 * week.done) / week.planned) / 10,
      notDone: week.notDone.map((each) => ({ ...each, words: missWords[each.reason] })),
    }));
    return answer(asData({ weeks: shown }));
  },
});
