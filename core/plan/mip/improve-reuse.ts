// `calc plan` with time or steps to improve: the instant plan bettered and proved with a solver at hand.
import { answer, type Answer } from '../../answer.ts';
import type { PlanAnswer, PlanInput } from '../contract.ts';
import { edgesOf } from '../edges.ts';
import { instantPlan } from '../instant-plan.ts';
import { planAnswerOf, readModel } from '../plan-reuse.ts';
import { startOf } from '../start-plan.ts';
import { improveWhole } from './improve-whole.ts';
import type { PlanSolver } from './solver.ts';

export interface Watch {
  /** The door's clock. */
  readonly nowMs: () => number;
  /** True ends the search; its best so far is the answer. */
  readonly isStopped?: () => boolean;
  /** The best so far, each time it or what is proved of it gets better. */
  readonly report?: (plan: PlanAnswer) => void;
}

export function improveReuse(
  input: PlanInput,
  solver: PlanSolver,
  { nowMs, isStopped, report }: Watch,
): Answer<PlanAnswer> {
  const startedMs = nowMs();
  const read = readModel(input);
  if (!read.ok) return read;
  const model = read.value;
  const edges = edgesOf(model);
  const { improveSeconds, improveSteps, seed = 1 } = input;
  const taken = (): number => Math.max(0, nowMs() - startedMs);
  const allowedMs = (improveSeconds ?? Infinity) * 1000;
  const used = (): number => {
    if (isStopped?.() === true) return 1;
    return allowedMs === Infinity ? 0 : Math.min(1, taken() / Math.max(1, allowedMs));
  };
  const first = instantPlan(model, edges, startOf(model, edges, input.start));
  const steps = improveSteps ?? (improveSeconds === undefined ? 0 : Infinity);
  const told = planAnswerOf(model, edges, first, taken());
  if (!told.ok || allowedMs === 0 || steps === 0) return told;
  report?.(told.value);
  const { sketch, proved } = improveWhole(
    model,
    edges,
    first,
    {
      seed,
      steps,
      used,
      // A solver without any time left would not even begin; it asks `used` when it has.
      secondsLeft: () => Math.max(0.05, (allowedMs - taken()) / 1000),
      onBetter: (better, known) => {
        if (report === undefined) return;
        const plan = planAnswerOf(model, edges, better, taken(), known);
        if (plan.ok) report(plan.value);
      },
    },
    solver,
  );
  const plan = planAnswerOf(model, edges, sketch, taken(), proved);
  return plan.ok ? answer(plan.value) : plan;
}
