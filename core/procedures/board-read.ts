// The board of a job: a row a pour with its times, the turns and what follows each, the steps of every
// day, what is short, and what the plan costs. All of it follows from the book at this moment.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { shownBoard } from './shown-board.ts';
import { query } from './procedure.ts';
import { code, date, finding, instant, planned, pour, pourTimes } from './shapes.ts';
import { yardNote } from './yard-notes.ts';

export const boardDay = z.strictObject({
  date,
  working: z.boolean(),
  shift: z.strictObject({ from: instant, to: instant }).nullable(),
  /** Crew hours that the steps of the day need, and those there are in its shift. */
  crewHoursNeeded: z.number(),
  crewHoursThere: z.number(),
  /** Of all cranes together, less other bookings; null where no hours of a crane are set. */
  craneMinutesNeeded: z.number().nullable(),
  craneMinutesThere: z.number().nullable(),
  /** Most gangs on the ground at once, and the places there are; null where no pads are set. */
  padPlacesNeeded: z.int().nullable(),
  padPlacesThere: z.int().nullable(),
  /** Ids of what is overloaded on it, as `overload.list` has them. */
  overloads: z.array(z.string()),
  shortfalls: z.array(z.string()),
  /** Components that are short or nearly used up on it, and of which the figure is estimated, listed or old. */
  restsOnWeak: z.array(code),
});

export const boardPour = z.strictObject({
  pour,
  times: pourTimes,
  /** Gates not done yet: with any of them the pour is not ready. */
  openGates: z.array(
    z.strictObject({
      name: z.string(),
      who: z.string(),
      before: z.enum(['set', 'close', 'pour']),
      promised: date,
      late: z.boolean(),
    }),
  ),
  shortfalls: z.array(z.string()),
  findings: z.array(finding),
});

export const board = z.strictObject({
  job: z.strictObject({
    code,
    name: z.string(),
    timeZone: z.string(),
    currency: z.string(),
    units: z.enum(['us', 'metric']),
    crew: z.int(),
    planFrom: date,
  }),
  changeNumber: z.int(),
  days: z.array(boardDay),
  pours: z.array(boardPour),
  /** Pours whose day nobody has set: in no plan. */
  undated: z.array(z.strictObject({ code, name: z.string() })),
  /** What the yard changes for this plan. */
  yardNotes: z.array(yardNote),
  /** Of the plan as a whole: entries that cannot all hold, choices that cannot be obeyed. */
  planFindings: z.array(finding),
  ...planned,
});

export const boardRead = query({
  name: 'board.read',
  input: z.strictObject({ job: code, now: instant.optional() }),
  output: board,
  run: async (book, { job: jobCode, now }) => {
    const facts = await readJobFacts(book, jobCode, now);
    if (!facts.ok) return facts;
    const plan = planJob(facts.value);
    return plan.ok ? answer(shownBoard(plan.value)) : plan;
  },
});
