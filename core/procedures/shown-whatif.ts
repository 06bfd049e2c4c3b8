// What a moved pour changes, as the difference of two whole plans: a fix that only moves the clash shows it.
import { never } from '../answer.ts';
import { dateOfDay, dayOfDate } from '../plan/days.ts';
import { msOf } from '../plan/local-time.ts';
import { pourFindings } from '../plan/pour-findings.ts';
import { workedDayFrom } from '../plan/working-days.ts';
import { found } from './by-code.ts';
import type { JobPlan } from './job-plan.ts';
import { compareShortfalls } from './compare-shortfalls.ts';
import { shownPlan } from './shown-plan.ts';
import { shownTimes } from './shown-times.ts';

type Shown = ReturnType<typeof shownPlan>;
type ShownTurn = Shown['turns'][number];
type ShownStep = Shown['steps'][number];
interface Move {
  readonly pour: string;
  readonly workingDays: number;
}

/** @param today the date from which the near steps are compared, YYYY-MM-DD */
export function shownWhatif(before: JobPlan, after: JobPlan, moves: readonly Move[], today: string) {
  const [shownBefore, shownAfter] = [shownPlan(before), shownPlan(after)];
  const nearEnd = nextWorkingDate(before, today);
  const near = (step: ShownStep): boolean => step.date >= today && step.date <= nearEnd;
  return {
    moves: moves.map((move) => shownMove(before, after, move)),
    before: summaryOf(shownBefore),
    after: summaryOf(shownAfter),
    ...compareShortfalls(shownBefore.shortfalls, shownAfter.shortfalls),
    costChangeCents: shownAfter.cost.totalCents - shownBefore.cost.totalCents,
    today,
    droppedSteps: without(shownBefore.steps.filter(near), shownAfter.steps),
    addedSteps: without(shownAfter.steps.filter(near), shownBefore.steps),
    rerouted: rerouted(shownBefore.turns, shownAfter.turns),
    heldLonger: heldLonger(shownBefore.turns, shownAfter.turns),
    call: calls(before, moves),
    findings: after.facts.pours
      .filter((pour) => isNear(pour.code, pour.after, moves))
      .flatMap((pour) => pourFindings(after.facts.job, pour, after.facts.pours, after.facts.designs)),
  };
}

function summaryOf({ cost, boundCents, shortfalls }: Shown) {
  return { cost, boundCents, shortfalls };
}

function shownMove(before: JobPlan, after: JobPlan, { pour, workingDays }: Move) {
  const { job, pours } = before.facts;
  const from = shownTimes(found(before.turnsOf.times, pour), job);
  const to = shownTimes(found(after.turnsOf.times, pour), job);
  return {
    pour,
    name: pours.find((each) => each.code === pour)?.name ?? '',
    workingDays,
    finishBefore: from.finishAt,
    finishAfter: to.finishAt,
    stripBefore: from.stripFrom,
    stripAfter: to.stripFrom,
    freeBefore: from.freeAt,
    freeAfter: to.freeAt,
  };
}

/** The next working day after `today`: what is told to the crew for the two of them is what hurts to change. */
function nextWorkingDate({ facts: { job } }: JobPlan, today: string): string {
  return dateOfDay(workedDayFrom(dayOfDate(today), 1, job.shifts));
}

/** Steps of the one list that are not, in the same way, in the other. */
function without(steps: readonly ShownStep[], others: readonly ShownStep[]): ShownStep[] {
  const sign = ({ date, kind, pour, toPour, designs }: ShownStep): string =>
    JSON.stringify([date, kind, pour, toPour, designs]);
  const there = new Set(others.map(sign));
  return steps.filter((step) => !there.has(sign(step)));
}

function rerouted(before: readonly ShownTurn[], after: readonly ShownTurn[]) {
  const pourOf = new Map(after.map((turn) => [turn.id, turn.pour]));
  const was = new Map(before.map((turn) => [turn.id, words(turn, pourOf)]));
  return after
    .map((turn) => ({
      turn: turn.id,
      pour: turn.pour,
      before: was.get(turn.id) ?? '',
      after: words(turn, pourOf),
    }))
    .filter((each) => each.before !== each.after);
}

/** Where a gang goes after a turn. To which of a pour's like gangs it goes changes nothing on site. */
function words({ after }: ShownTurn, pourOf: ReadonlyMap<string, string>): string {
  switch (after.how) {
    case 'break-down':
      return 'broken down';
    case 'fly-on':
      return `flies on to ${pourOf.get(after.turn) ?? ''}`;
    case 'regang':
      return `re-ganged for ${pourOf.get(after.turn) ?? ''}`;
    default:
      return never(after);
  }
}

function heldLonger(before: readonly ShownTurn[], after: readonly ShownTurn[]) {
  const was = new Map(before.map((turn) => [turn.id, msOf(turn.to)]));
  return after
    .filter((turn) => msOf(turn.to) > (was.get(turn.id) ?? Infinity))
    .map(({ id, pour, design, to }) => ({ turn: id, pour, design, until: to }));
}

/** Those who promised work at a moved pour, or at a pour that comes after one. */
function calls({ facts: { pours } }: JobPlan, moves: readonly Move[]) {
  return pours
    .filter((pour) => isNear(pour.code, pour.after, moves))
    .flatMap((pour) =>
      pour.gates
        .filter((gate) => !gate.done)
        .map((gate) => ({ who: gate.who, about: gate.name, pour: pour.code, promised: gate.promised })),
    );
}

function isNear(code: string, after: readonly string[], moves: readonly Move[]): boolean {
  return moves.some(({ pour }) => pour === code || after.includes(pour));
}
