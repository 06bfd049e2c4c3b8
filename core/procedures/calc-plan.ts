// `regang calc plan`: the reuse plan of turns and loose turns given as JSON.
import { planAnswer, planInput } from '../plan/contract.ts';
import { planReuse } from '../plan/plan-reuse.ts';
import { calculation } from './procedure.ts';

export const calcPlan = calculation({
  name: 'plan',
  input: planInput,
  output: planAnswer,
  run: (input) => planReuse(input, () => performance.now()),
});
