// `regang calc plan`: the reuse plan of turns and loose turns given as JSON; with time or steps to improve, bettered and
// proved by the solver.
import { planAnswer, planInput } from '../plan/contract.ts';
import { improveReuse } from '../plan/mip/improve-reuse.ts';
import { planReuse } from '../plan/plan-reuse.ts';
import { planSolver } from './plan-solver.ts';
import { calculation } from './procedure.ts';

const nowMs = (): number => performance.now();

export const calcPlan = calculation({
  name: 'plan',
  input: planInput,
  output: planAnswer,
  run: async (input) =>
    input.improveSeconds === undefined && input.improveSteps === undefined
      ? planReuse(input, nowMs)
      : improveReuse(input, await planSolver(), { nowMs }),
});
