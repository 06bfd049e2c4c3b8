// What is different between two plans of a job, whatever made it so: short pieces, times of pours, crew and crane by day,
// what the crew was told, whom to call. Nothing of it is stored.
import { z } from 'zod';
import { type Instruction, instruction } from '../plan/choices.ts';
import type { PlanChange } from '../plan/plan-changes.ts';
import { choiceTurns, turnsOfChoice } from './choice-shapes.ts';
import { callsFor } from './calls-for.ts';
import { compareShortfalls } from './compare-shortfalls.ts';
import { changedDay, changedDays, type Loads, loadsOf } from './changed-days.ts';
import { changedPour, changedPours } from './changed-pours.ts';
import { findingsOfPour, foundFrom } from './findings-of-pour.ts';
import type { JobPlan } from './job-plan.ts';
import { isNear } from './near-pours.ts';
import { heldLonger, rerouted } from './other-ways.ts';
import { plannedCentsOf } from './planned-cents.ts';
import { code, date, finding, instant, shortfall } from './shapes.ts';
import { changedTold, shownPlan } from './shown-plan.ts';

export type Shown = ReturnType<typeof shownPlan>;

const toldLine = z.strictObject({ instruction, ...choiceTurns });

export const planDifference = {
  /** Shortfalls that are new, gone, or of another size. Matched by component and overlapping time. */
  newShortfalls: z.array(shortfall),
  goneShortfalls: z.array(shortfall),
  changedShortfalls: z.array(z.strictObject({ before: shortfall, after: shortfall })),
  /** Labour, hire and changed instructions together. */
  costChangeCents: z.int(),
  /** The same with the pieces that are planned to come. */
  allChangeCents: z.int(),
  /** Pours at other times, dropped or added. */
  pours: z.array(changedPour),
  /** Days on which crew, crane or pads are needed or there otherwise. */
  days: z.array(changedDay),
  /** What the crew was told and would no longer do, and what it would do again. */
  toldChanged: z.array(toldLine),
  toldAgain: z.array(toldLine),
  /** Gangs that now go somewhere else, or are built otherwise. */
  rerouted: z.array(z.strictObject({ turn: z.string(), pour: code, before: z.string(), after: z.string() })),
  /** Gangs held longer because a moved pour keeps them: turn and new end. */
  heldLonger: z.array(z.strictObject({ turn: z.string(), pour: code, design: code, until: instant })),
  /** Whom to call: gates of the pours that are touched with their promised dates, and whoever sends pieces. */
  call: z.array(
    z.strictObject({
      who: z.string(),
      about: z.string(),
      /** Null where it is about pieces. */
      pour: code.nullable(),
      promised: date.nullable(),
      /** As the job's settings have it; null where they have none. */
      phone: z.string().nullable(),
    }),
  ),
  findings: z.array(finding),
};

export interface Compared {
  readonly plan: JobPlan;
  readonly shown: Shown;
  readonly loads: Loads;
}

export function comparedOf(plan: JobPlan): Compared {
  return { plan, shown: shownPlan(plan), loads: loadsOf(plan) };
}

/** @param changes what makes the second plan out of the first, where that is known */
export function differenceOf(before: Compared, after: Compared, changes: readonly PlanChange[]) {
  const pours = changedPours(before.plan, after.plan);
  const touched = new Set([...pours.map(({ pour }) => pour), ...changes.flatMap(poursOf)]);
  const cost = after.shown.cost.totalCents - before.shown.cost.totalCents;
  return {
    ...compareShortfalls(before.shown.shortfalls, after.shown.shortfalls),
    costChangeCents: cost,
    allChangeCents: cost + plannedCentsOf(after.plan.facts) - plannedCentsOf(before.plan.facts),
    pours,
    days: changedDays(before.loads, after.loads),
    toldChanged: toldOnlyIn(after.plan, before.plan, before.plan),
    toldAgain: toldOnlyIn(before.plan, after.plan, after.plan),
    rerouted: rerouted(before.shown.turns, after.shown.turns),
    heldLonger: heldLonger(before.shown.turns, after.shown.turns),
    call: callsFor(before.plan, touched, changes),
    findings: findingsOf(before.plan, after.plan, touched),
  };
}

function poursOf(change: PlanChange): readonly string[] {
  return 'pour' in change ? [change.pour] : [];
}

/** Told instructions that the one plan changes and the other does not. */
function toldOnlyIn(one: JobPlan, other: JobPlan, named: JobPlan) {
  const there = new Set(changedTold(other).map(textOf));
  return changedTold(one)
    .filter((told) => !there.has(textOf(told)))
    .map((told) => ({ instruction: told, ...turnsOfChoice(named, told) }));
}

function textOf(told: Instruction): string {
  return JSON.stringify(told);
}

/** Those of the touched pours and of what comes after them; of the plan as a whole only what is new. */
function findingsOf(before: JobPlan, after: JobPlan, touched: ReadonlySet<string>) {
  const { pours } = after.facts;
  const from = foundFrom(after.facts);
  const known = new Set(before.findings.map((each) => JSON.stringify(each)));
  return [
    ...pours
      .filter((pour) => isNear(pour.code, pour.after, touched))
      .flatMap((pour) => findingsOfPour(from, pour)),
    ...after.findings.filter((each) => !known.has(JSON.stringify(each))),
  ];
}
