// Two plans of one input held against each other, and a bound that was proved for it elsewhere.
import type { PlanAnswer, PlanInput } from './contract.ts';

/** The cheaper of two plans of one input, with the higher of their bounds: both are under every plan. */
export function better(one: PlanAnswer, other: PlanAnswer): PlanAnswer {
  const isLess =
    other.cost.unmet < one.cost.unmet ||
    (other.cost.unmet === one.cost.unmet && other.cost.total < one.cost.total);
  const plan = isLess ? other : one;
  return withBound(plan, Math.max(one.bound, other.bound));
}

/** The plan with a bound that was proved for the same input; never one above its own cost. */
export function withBound(plan: PlanAnswer, proved: number): PlanAnswer {
  const { total } = plan.cost;
  const bound = Math.max(plan.bound, Math.min(proved, total));
  return {
    ...plan,
    bound,
    gapPercent: total > 0 ? Math.max(0, (100 * (total - bound)) / total) : 0,
    proven: total - bound <= 1,
  };
}

/** What is asked, whatever it begins from and however long it may look: plans of one key share their bounds. */
export function questionKey(input: PlanInput): string {
  const { start: _start, seed: _seed, improveSeconds: _seconds, improveSteps: _steps, ...question } = input;
  return JSON.stringify(question);
}
