// Makes sure that the plan of an input with time to improve is among those remembered: bettered by the solver.
import type { PlanInput } from '../plan/contract.ts';
import { improveReuse } from '../plan/mip/improve-reuse.ts';
import { planSolver } from './plan-solver.ts';
import { isRemembered, rememberPlan } from './remembered-plans.ts';

export async function improvedPlan(input: PlanInput): Promise<void> {
  if (isRemembered(input)) return;
  const solver = await planSolver();
  rememberPlan(input, improveReuse(input, solver, { nowMs: () => performance.now() }));
}
