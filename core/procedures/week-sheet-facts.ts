// Everything that a week plan shows, out of the plan as the book has it; laying it out comes after (core/sheets).
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { dateOfDay, dayOfDate } from '../plan/days.ts';
import { instantText, localDate, startOfDate } from '../plan/local-time.ts';
import { gateNeededBy } from '../plan/pour-findings.ts';
import { closingSide, type PourTimes, setFromOf } from '../plan/pour-times.ts';
import type { Pour } from '../plan/pours.ts';
import { printState } from '../sheets/changes.ts';
import { type WeekDay, weekLines, type WeekPour, type WeekSheetFacts } from '../sheets/week-lines.ts';
import { found } from './by-code.ts';
import { readJobFacts } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';
import { shownBoard } from './shown-board.ts';
import { printsOf, type SheetOfDays, weekFrom } from './sheet-of-days.ts';
import { shortOnDate } from './short-on-date.ts';

const daysShown = 14;

export interface AskedSheet {
  readonly given?: readonly string[];
  readonly units?: 'us' | 'metric';
  readonly now?: string;
}

export async function readWeekSheet(
  book: BookReader,
  of: SheetOfDays,
  asked: AskedSheet,
): Promise<Answer<WeekSheetFacts>> {
  const facts = await readJobFacts(book, of.job, asked.now);
  if (!facts.ok) return facts;
  const plan = planJob(facts.value);
  if (!plan.ok) return plan;
  const { job, planning, yard, changeNumber } = facts.value;
  const from = of.date ?? weekFrom(yard.today);
  const to = dateOfDay(dayOfDate(from) + daysShown - 1);
  const pours = facts.value.pours
    .map((pour) => weekPour(plan.value, pour, { from, to }))
    .sort((one, other) => (one.set < other.set ? -1 : 1));
  const days = weekDays(plan.value, from, to);
  const prints = printsOf(
    await book.jobEntries(of.job, 'sheet-print'),
    { kind: 'week', date: from },
    job.timeZone,
  );
  return answer({
    job,
    from,
    to,
    pours,
    days,
    print: printState(weekLines({ pours, days }), prints),
    given: asked.given ?? [],
    changeNumber,
    phones: planning.settings.phones,
    units: asked.units ?? job.units,
  });
}

function weekPour(
  { facts: { job, planning }, turnsOf }: JobPlan,
  pour: Pour,
  window: { readonly from: string; readonly to: string },
): WeekPour {
  const times = found(turnsOf.times, pour.code);
  const text = (ms: number): string => instantText(ms, job.timeZone);
  const set = Math.min(...times.sides.map(({ setFrom }) => setFrom));
  const close = setFromOf(times, closingSide(times));
  const hold = planning.pourFacts.get(pour.code)?.hold ?? null;
  return {
    code: pour.code,
    name: pour.name,
    steel: steelOf(pour),
    set: text(set),
    close: close > set ? text(close) : null,
    pour: text(times.finish),
    strip: text(times.stripFrom),
    gates: openGates(pour, times, job.timeZone),
    held: hold === null ? null : `${hold.reason}, says ${hold.who}`,
    isShown: text(set).slice(0, 10) <= window.to && text(times.stripTo).slice(0, 10) >= window.from,
  };
}

/** Gates are work by others under any name; those of the steel are told by it. */
function steelOf({ gates }: Pour): WeekPour['steel'] {
  const steel = gates.filter(({ name }) => /\b(?:steel|rebar|reinforcement|reinforcing)\b/iu.test(name));
  const last = [...steel].sort((one, other) => (one.promised < other.promised ? -1 : 1)).at(-1);
  return last === undefined ? null : { date: last.promised, done: steel.every(({ done }) => done) };
}

function openGates(pour: Pour, times: PourTimes, timeZone: string): WeekPour['gates'] {
  return pour.gates
    .filter(({ done }) => !done)
    .map((gate) => ({
      name: gate.name,
      who: gate.who,
      promised: gate.promised,
      late: gate.promised > localDate(gateNeededBy(times, gate), timeZone),
    }));
}

/** Days on which somebody works, or something is needed or short. */
function weekDays(plan: JobPlan, from: string, to: string): readonly WeekDay[] {
  const { job } = plan.facts;
  const board = shownBoard(plan);
  const byDate = new Map(board.days.map((day) => [day.date, day]));
  const count = dayOfDate(to) - dayOfDate(from) + 1;
  return Array.from({ length: count }, (_, index) => dateOfDay(dayOfDate(from) + index)).flatMap((date) => {
    const day = byDate.get(date);
    const span = {
      from: startOfDate(date, job.timeZone),
      to: startOfDate(dateOfDay(dayOfDate(date) + 1), job.timeZone),
    };
    const short = shortOnDate(board.shortfalls, span);
    const crewHours = day?.crewHoursNeeded ?? 0;
    if (day?.working !== true && crewHours === 0 && short.length === 0) return [];
    return [{ date, crewHours, crewHoursThere: day?.crewHoursThere ?? 0, crane: craneOf(day), short }];
  });
}

type BoardDay = ReturnType<typeof shownBoard>['days'][number];

/** Null where no hours of a crane are set. */
export function craneOf(day: BoardDay | undefined): WeekDay['crane'] {
  const [minutes, minutesThere] = [day?.craneMinutesNeeded ?? null, day?.craneMinutesThere ?? null];
  return minutes === null || minutesThere === null ? null : { minutes, minutesThere };
}
