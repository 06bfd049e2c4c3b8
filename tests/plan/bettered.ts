// Plans bettered with the solver, as `calc plan` does with steps or seconds to improve; without a clock unless one is given.
import { planAnswer, planInput, type PlanAnswer, type PlanInput } from '../../core/plan/contract.ts';
import { improveReuse, type Watch } from '../../core/plan/mip/improve-reuse.ts';
import { planSolver } from '../../core/procedures/plan-solver.ts';

const solver = await planSolver();

export function bettered(input: PlanInput, watch: Watch = { nowMs: () => 0 }): PlanAnswer {
  const made = improveReuse(planInput.parse(input), solver, watch);
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return planAnswer.parse(made.value);
}
