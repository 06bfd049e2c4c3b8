// Everything that a day sheet shows, out of the plan as the book has it; laying it out comes after (core/sheets).
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { shiftsBetween } from '../plan/calendar.ts';
import type { Instruction } from '../plan/choices.ts';
import type { DayLine } from '../plan/day-end/day-lines.ts';
import { dateOfDay, dayOfDate } from '../plan/days.ts';
import { instantText, localDate, startOfDate } from '../plan/local-time.ts';
import { gateNeededBy } from '../plan/pour-findings.ts';
import { printState } from '../sheets/changes.ts';
import { type DayGate, dayLinesOf, type DaySheetFacts, type DayStep } from '../sheets/day-sheet.ts';
import { dayWords } from '../sheets/day-words.ts';
import { pickStepWords } from '../sheets/pick-step-words.ts';
import { stepWords } from '../sheets/step-words.ts';
import { found } from './by-code.ts';
import { type DayFacts, readDay } from './day-facts.ts';
import { printsOf, type SheetOfDays } from './sheet-of-days.ts';
import { shortOnDate } from './short-on-date.ts';
import { shownBoard } from './shown-board.ts';
import { shownLine } from './shown-day.ts';
import { shownPlan } from './shown-plan.ts';
import { shownWorkDays } from './shown-work-days.ts';
import { nextOf } from './ticket-parts.ts';
import { nextWords } from './ticket-words.ts';
import { toldWords } from './told-words.ts';
import { type AskedSheet, craneOf } from './week-sheet-facts.ts';

export async function readDaySheet(
  book: BookReader,
  of: SheetOfDays,
  asked: AskedSheet,
): Promise<Answer<DaySheetFacts>> {
  const read = await readDay(book, {
    job: of.job,
    date: of.date === null ? undefined : of.date,
    now: asked.now,
  });
  if (!read.ok) return read;
  const day = read.value;
  const { job, planning } = day.facts;
  const { date } = day;
  const next = dateOfDay(dayOfDate(date) + 1);
  const span = { from: startOfDate(date, job.timeZone), to: startOfDate(next, job.timeZone) };
  const board = shownBoard(day.plan);
  const crew = board.days.find((each) => each.date === date);
  const steps = daySteps(day);
  const prints = printsOf(await book.jobEntries(of.job, 'sheet-print'), { kind: 'day', date }, job.timeZone);
  return answer({
    job,
    date,
    shifts: shiftsBetween(span.from, span.to, job.shifts)
      .filter(({ from }) => from >= span.from)
      .map(({ from, to }) => ({ from: instantText(from, job.timeZone), to: instantText(to, job.timeZone) })),
    people: job.crew,
    crewHours: crew?.crewHoursNeeded ?? 0,
    crewHoursThere: crew?.crewHoursThere ?? 0,
    crane: craneOf(crew),
    steps,
    picks: picksOn(day),
    gates: dueGates(day),
    told: toldOn(day.lines, planning.told).map((each) => toldWords(each, day.plan.turnsOf.turns)),
    short: shortOnDate(board.shortfalls, span),
    print: printState(dayLinesOf({ steps }), prints),
    given: asked.given ?? [],
    phones: planning.settings.phones,
    units: asked.units ?? job.units,
  });
}

function daySteps(day: DayFacts): readonly DayStep[] {
  const { turns } = shownPlan(day.plan);
  const goesTo = (line: DayLine): readonly string[] =>
    ['strip', 'fly-on', 'regang'].includes(line.kind)
      ? turns
          .filter(({ id, pour }) => line.turns.includes(id) && pour === line.pour)
          .map((turn) => `${turn.design}: ${nextWords(nextOf(turn, turns, 'the yard'), 'the yard')}`)
      : [];
  return day.lines.map((line): DayStep => {
    const shown = shownLine(line, day);
    return {
      key: line.id,
      from: shown.from,
      to: shown.to,
      words: stepWords(line),
      gangs: shown.gangs,
      goesTo: goesTo(line),
      open: shown.openGates.map(
        ({ name, who, promised, late }) =>
          `${name} by ${who}, ${dayWords(promised)}${late ? ', too late' : ''}`,
      ),
      leftFrom: line.leftFrom,
    };
  });
}

function picksOn({ plan, date }: DayFacts): DaySheetFacts['picks'] {
  const cranes = shownWorkDays(plan).find((each) => each.date === date)?.cranes ?? [];
  if (cranes.length === 0) return null;
  return cranes.flatMap(({ crane, picks }) =>
    picks.map((pick) => ({ crane, at: pick.at, words: pickStepWords(pick) })),
  );
}

/** Not done, and promised for the day or needed by its end, of pours that are not poured before it. */
function dueGates({ facts, plan, date }: DayFacts): readonly DayGate[] {
  const { timeZone } = facts.job;
  return facts.pours.flatMap((pour) => {
    const times = found(plan.turnsOf.times, pour.code);
    if (localDate(times.finish, timeZone) < date) return [];
    return pour.gates.flatMap((gate): DayGate[] => {
      const needed = localDate(gateNeededBy(times, gate), timeZone);
      if (gate.done || (needed > date && gate.promised > date)) return [];
      const { name, who, before, promised } = gate;
      return [{ name, who, pour: pour.code, before, promised, late: promised > needed }];
    });
  });
}

/** Instructions whose work is on the list of the day. */
function toldOn(lines: readonly DayLine[], told: readonly Instruction[]): readonly Instruction[] {
  const worked = new Set(lines.flatMap(({ kind, turns }) => turns.map((turn) => `${kind} ${turn}`)));
  const isWorked = (turn: string, kinds: readonly string[]): boolean =>
    kinds.some((kind) => worked.has(`${kind} ${turn}`));
  return told.filter((each) =>
    each.kind === 'follow'
      ? isWorked(each.from, ['strip', 'fly-on', 'regang']) || isWorked(each.to, ['set', 'close'])
      : each.kind === 'assemble'
        ? isWorked(each.turn, ['assemble', 'set', 'close'])
        : isWorked(each.turn, ['strip', 'break-down']),
  );
}
