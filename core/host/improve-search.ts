// The search of a thread beside: better and better plans with a bound under all of them, reported as they are found.
import type { Answer } from '../answer.ts';
import type { PlanAnswer, PlanInput } from '../plan/contract.ts';
import { improveReuse } from '../plan/mip/improve-reuse.ts';
import { planSolver } from '../procedures/plan-solver.ts';

/** Every plan reported is the best so far, with the best bound so far. */
export type Report = (plan: Answer<PlanAnswer>) => void;

/** Ends when its best is proven, no way to better it is left or the time is up; it may also be stopped from outside. */
export async function improveSearch(
  input: PlanInput,
  seconds: number,
  nowMs: () => number,
  report: Report,
): Promise<void> {
  const solver = await planSolver();
  const found = improveReuse({ ...input, improveSeconds: seconds }, solver, {
    nowMs,
    report: (plan) => report({ ok: true, value: plan }),
  });
  report(found);
}
