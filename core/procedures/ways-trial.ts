// Changes tried out for a shortfall: the job as if they were carried out, planned anew by the same planner as every plan
// of the job, so that what is said before is what comes of it. How many may be tried follows from the size of the
// job alone, never from the clock: the same question gives the same ways out.
import type { PlanAnswer, PlanInput } from '../plan/contract.ts';
import type { PlanChange } from '../plan/plan-changes.ts';
import type { PourFinding } from '../plan/pour-findings.ts';
import { planReuse } from '../plan/plan-reuse.ts';
import type { TurnsOfPours } from '../plan/turns-from-pours.ts';
import { shortIn } from '../plan/ways/short-in.ts';
import { changedSource } from './changed-source.ts';
import { findingsOfPour, foundFrom } from './findings-of-pour.ts';
import { factsOf, type JobFacts } from './job-facts.ts';
import { type JobPlan, turnsOfJob } from './job-plan.ts';
import { jobPlanInput } from './job-plan-input.ts';
import { isNear } from './near-pours.ts';
import { planFindings } from './plan-findings.ts';
import type { ShownShortfall } from './ways-shapes.ts';

export const wayKinds = ['hire', 'slip', 'gang', 'strip', 'transfer', 'design', 'two-together'] as const;
export type WayKind = (typeof wayKinds)[number];

export interface Candidate {
  readonly kind: WayKind;
  readonly changes: readonly PlanChange[];
  readonly text: string;
}

/** Candidates of one kind for one pour, gang or source: the first that helps is taken. */
export interface Group {
  readonly kind: WayKind;
  readonly tries: readonly Candidate[];
}

export interface Trial {
  readonly candidate: Candidate;
  readonly facts: JobFacts;
  readonly turnsOf: TurnsOfPours;
  readonly input: PlanInput;
  readonly answer: PlanAnswer;
  /** How many are still short while the shortfall lasts, at most. */
  readonly left: number;
  /** New findings that forbid it. */
  readonly stops: readonly string[];
}

export interface WaysQuestion {
  readonly plan: JobPlan;
  readonly shortfall: ShownShortfall;
  /** The other jobs of the book, planned. */
  readonly others: readonly JobPlan[];
  readonly nowMs: number;
}

/** Null where the entries themselves do not fit. */
export function tryOut({ plan, shortfall }: WaysQuestion, candidate: Candidate): Trial | null {
  const changed = changedSource(plan.facts.source, candidate.changes);
  if (!changed.ok) return null;
  const facts = factsOf(changed.value);
  const turnsOf = turnsOfJob(facts);
  const asked = jobPlanInput(facts, turnsOf);
  // A fixed choice that no plan can obey would be left out, and the change with it.
  if (asked.findings.length > plan.findings.filter(({ rule }) => rule === 'fixed-choice').length) return null;
  const planned = planReuse(asked.input, () => performance.now());
  if (!planned.ok) return null;
  return {
    candidate,
    facts,
    turnsOf,
    input: asked.input,
    answer: planned.value,
    left: shortIn(planned.value.shortfalls, shortfall),
    stops: newStops(plan, facts, turnsOf, candidate.changes),
  };
}

/** Pieces and choices touch no pour; what is wrong with a pour may be wrong with what comes right after it. */
function newStops(
  before: JobPlan,
  facts: JobFacts,
  turnsOf: TurnsOfPours,
  changes: readonly PlanChange[],
): readonly string[] {
  const touched = new Set(changes.flatMap((change) => ('pour' in change ? [change.pour] : [])));
  if (touched.size === 0) return [];
  const near = (own: JobFacts): readonly PourFinding[] =>
    own.pours
      .filter((pour) => isNear(pour.code, pour.after, touched))
      .flatMap((pour) => findingsOfPour(foundFrom(own), pour));
  const known = new Map<string, number>();
  for (const { rule, where } of stopsOf([...near(before.facts), ...before.findings]))
    known.set(`${rule} ${where}`, (known.get(`${rule} ${where}`) ?? 0) + 1);
  return stopsOf([...near(facts), ...planFindings(facts, turnsOf)]).flatMap(({ rule, where, message }) => {
    const left = known.get(`${rule} ${where}`) ?? 0;
    known.set(`${rule} ${where}`, left - 1);
    return left > 0 ? [] : [message];
  });
}

/** Ties without a hole opposite are a caution of a pour as entered; a way out does not make one. */
function stopsOf(findings: readonly PourFinding[]): readonly PourFinding[] {
  return findings.filter(({ rule, severity }) => severity === 'stop' || rule === 'ties-through');
}

/** Plans that one question may cost: a plan takes about as long as its turns times its components. */
export function mostTrials({ input }: JobPlan): number {
  const size = Math.max(1, input.turns.length * input.components.length);
  return Math.max(8, Math.min(30, Math.round(200_000 / size)));
}
