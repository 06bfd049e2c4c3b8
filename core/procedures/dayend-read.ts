// The list of a day for its end: steps of the plan, work left over, what was reported already.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { missReasons, missWords } from '../plan/day-end/reasons.ts';
import { shiftsBetween } from '../plan/calendar.ts';
import { dateOfDay, dayOfDate } from '../plan/days.ts';
import { zoneOf } from '../plan/local-time.ts';
import { isReported } from '../plan/day-end/day-lines.ts';
import { type DayFacts, readDay } from './day-facts.ts';
import { query } from './procedure.ts';
import { code, date, instant } from './shapes.ts';
import { dayLine, reason, shownLine } from './shown-day.ts';

export const dayendRead = query({
  name: 'dayend.read',
  input: z.strictObject({ job: code, date: date.optional(), now: instant.optional() }),
  output: z.strictObject({
    date,
    timeZone: z.string(),
    /** Whether anybody works on it by the calendar. */
    working: z.boolean(),
    report: z
      .strictObject({
        id: z.string(),
        at: instant,
        who: z.string(),
        remark: z.string().nullable(),
        /** Only the last of all reports can be taken back. */
        canBeTakenBack: z.boolean(),
        /** How often the day was ended before. */
        corrections: z.int(),
      })
      .nullable(),
    lines: z.array(dayLine),
    /** Days before it with steps that nobody has ended, from the first report on. */
    notEnded: z.array(date),
    /** The days with steps beside it. */
    before: date.nullable(),
    after: date.nullable(),
    reasons: z.array(z.strictObject({ reason, words: z.string() })),
  }),
  run: async (book, asked) => {
    const day = await readDay(book, asked);
    if (!day.ok) return day;
    const { facts, lines, report, plan } = day.value;
    const { timeZone, shifts } = facts.job;
    const zone = zoneOf(timeZone);
    const number = dayOfDate(day.value.date);
    const dates = plan.steps.filter(({ kind }) => isReported(kind)).map((step) => step.date);
    return answer({
      date: day.value.date,
      timeZone,
      working: shiftsBetween(zone.startMs(number), zone.startMs(number + 1), shifts).some(
        ({ from }) => dateOfDay(zone.dayOf(from)) === day.value.date,
      ),
      report: report === null ? null : shownReport(day.value),
      lines: lines.map((line) => shownLine(line, day.value)),
      notEnded: [...day.value.notEnded],
      before: dates.filter((each) => each < day.value.date).at(-1) ?? null,
      after: dates.find((each) => each > day.value.date) ?? null,
      reasons: missReasons.map((each) => ({ reason: each, words: missWords[each] })),
    });
  },
});

function shownReport({ report, reports, date: of }: DayFacts) {
  if (report === null) throw new Error(`${of} was not ended`);
  const { at, who, remark } = report.entry;
  return {
    id: report.id,
    at,
    who,
    remark,
    canBeTakenBack: reports.at(-1)?.id === report.id,
    corrections: reports.filter(({ entry }) => entry.date === of && entry.takesBack === null).length - 1,
  };
}
