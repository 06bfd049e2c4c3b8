// A bound that was proved for a plan's question elsewhere, at another time: it holds for every plan of the same question.
import type { PlanAnswer, PlanInput } from './contract.ts';

/** The plan with the bound; never one above its own cost. */
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
