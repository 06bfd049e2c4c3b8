// Ways to clear an overload, each found by planning the whole job with it: what it costs, and what it does besides.
import { type Answer, answer } from '../answer.ts';
import type { PlanChange } from '../plan/plan-changes.ts';
import { isCleared, moreHours, movesOf } from '../plan/work/clearing.ts';
import type { Overload } from '../plan/work/overloads.ts';
import { changedSource } from './changed-source.ts';
import { compareShortfalls } from './compare-shortfalls.ts';
import { factsOf } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';
import { jobWork } from './job-work.ts';
import { changedTold, shownShortfalls } from './shown-plan.ts';

export interface ClearingWay {
  readonly change: PlanChange;
  readonly costChangeCents: number;
  readonly newShortfalls: number;
  readonly goneShortfalls: number;
  /** Those that stay and are of another size. */
  readonly changedShortfalls: number;
  readonly toldChanged: number;
  readonly overloadsGone: readonly string[];
}

export interface Clearing {
  /** Those that clear it and make no other overload worse, the least first. */
  readonly ways: readonly ClearingWay[];
  readonly tried: number;
  /** How many would clear it and make another overload, or make one worse. */
  readonly moveTheClash: number;
}

export function clearOverload(before: JobPlan, overload: Overload): Answer<Clearing> {
  const ways: ClearingWay[] = [];
  let [tried, moveTheClash] = [0, 0];
  const { planning, source } = before.facts;
  let missing = overload.missing;
  // A longer day can draw in work that went on to the next, so that a little more is wanted than was missing.
  for (let round = 0; round < 3; round += 1) {
    const change = moreHours(
      overload,
      missing,
      before.facts.job,
      planning.settings.cranes,
      planning.craneBookings,
    );
    if (change === null) break;
    const seen = tryChange(before, overload, change);
    tried += 1;
    if (seen === null) break;
    if (seen.way !== null) ways.push(seen.way);
    if (seen.gone && seen.way === null) moveTheClash += 1;
    if (seen.gone || seen.left <= 0) break;
    missing += seen.left;
  }
  for (const change of movesOf(overload)) {
    if (!source.pours.some(({ code }) => change.kind === 'move' && code === change.pour)) continue;
    const seen = tryChange(before, overload, change);
    tried += 1;
    if (seen === null) continue;
    if (seen.way !== null) ways.push(seen.way);
    else if (seen.gone) moveTheClash += 1;
  }
  return answer({ ways: ways.sort(compareWays), tried, moveTheClash });
}

interface Seen {
  readonly gone: boolean;
  /** What is still missing. */
  readonly left: number;
  readonly way: ClearingWay | null;
}

/** Null where it cannot be planned. */
function tryChange(before: JobPlan, overload: Overload, change: PlanChange): Seen | null {
  const source = changedSource(before.facts.source, [change]);
  if (!source.ok) return null;
  const planned = planJob(factsOf(source.value));
  if (!planned.ok) return null;
  const after = planned.value;
  const [was, now] = [jobWork(before).overloads, jobWork(after).overloads];
  const { gone, worse } = isCleared(overload.id, was, now);
  const left = now.find(({ id }) => id === overload.id)?.missing ?? 0;
  if (!gone || worse.length > 0) return { gone, left, way: null };
  const shortfalls = compareShortfalls(shownShortfalls(before), shownShortfalls(after));
  const there = new Set(now.map(({ id }) => id));
  return {
    gone,
    left,
    way: {
      change,
      costChangeCents: after.answer.cost.total - before.answer.cost.total,
      newShortfalls: shortfalls.newShortfalls.length,
      goneShortfalls: shortfalls.goneShortfalls.length,
      changedShortfalls: shortfalls.changedShortfalls.length,
      toldChanged: changedTold(after).length - changedTold(before).length,
      overloadsGone: was.map(({ id }) => id).filter((id) => !there.has(id)),
    },
  };
}

/** Fewer new shortfalls, fewer told instructions changed, hours before moves, nearer moves, less cost. */
function compareWays(one: ClearingWay, other: ClearingWay): number {
  return (
    one.newShortfalls - other.newShortfalls ||
    one.toldChanged - other.toldChanged ||
    sizeOf(one.change) - sizeOf(other.change) ||
    one.costChangeCents - other.costChangeCents
  );
}

function sizeOf(change: PlanChange): number {
  return change.kind === 'move' ? Math.abs(change.workingDays) : 0;
}
