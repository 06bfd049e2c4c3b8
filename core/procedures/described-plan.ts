// A plan's runs in full and who holds what is short in it. A remembered plan is the answer to one input, so that what
// follows from both is kept with it: every screen that asks for the same plan would work it out again.
import { type Answer, answer } from '../answer.ts';
import type { PlanAnswer, PlanInput } from '../plan/contract.ts';
import { describeRuns, type RunDescription } from '../plan/describe-runs.ts';
import { shortfallFacts, type ShortfallFacts } from '../plan/shortfall-facts.ts';

export interface DescribedPlan {
  /** In the order of the answer. */
  readonly runs: readonly RunDescription[];
  readonly shortfalls: readonly ShortfallFacts[];
}

interface Kept {
  readonly timeZone: string;
  readonly described: Answer<DescribedPlan>;
}

const kept = new WeakMap<PlanAnswer, Kept>();

/** @param plan the very answer that was remembered for the input */
export function describedPlan(input: PlanInput, plan: PlanAnswer, timeZone: string): Answer<DescribedPlan> {
  const known = kept.get(plan);
  if (known?.timeZone === timeZone) return known.described;
  const described = describe(input, plan, timeZone);
  kept.set(plan, { timeZone, described });
  return described;
}

function describe(input: PlanInput, plan: PlanAnswer, timeZone: string): Answer<DescribedPlan> {
  const runs = describeRuns(input, plan.runs);
  if (!runs.ok) return runs;
  const shortfalls = shortfallFacts(input, plan, timeZone);
  return shortfalls.ok ? answer({ runs: runs.value, shortfalls: shortfalls.value }) : shortfalls;
}
