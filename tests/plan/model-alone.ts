// The mixed-integer model of a plan asked by itself: nothing known before, no prices, nothing left out. Only so is it the model
// and not the search around it that finds a plan of few turns.
import type { PlanInput } from '../../core/plan/contract.ts';
import { exactCost } from '../../core/plan/cost.ts';
import { edgesOf } from '../../core/plan/edges.ts';
import { runsOf } from '../../core/plan/holding.ts';
import { keepAll } from '../../core/plan/mip/kept.ts';
import type { Aim } from '../../core/plan/mip/plan-model.ts';
import { solveModel, type ModelAnswer } from '../../core/plan/mip/solve-model.ts';
import type { PlanSolver } from '../../core/plan/mip/solver.ts';
import { readModel } from '../../core/plan/plan-reuse.ts';
import { startOf } from '../../core/plan/start-plan.ts';

interface Alone {
  readonly runs: string[][];
  /** Piece-days, and minor units, that the model says no plan is under. */
  readonly unmetBound: number;
  readonly bound: number;
  readonly complete: boolean;
}

export function modelAlone(input: PlanInput, solver: PlanSolver): Alone {
  const read = readModel(input);
  if (!read.ok) throw new Error(read.error.message);
  const model = read.value;
  const edges = edgesOf(model);
  let best = startOf(model, edges, []) ?? new Int32Array(edges.turns);
  const ask = (aim: Aim): ModelAnswer =>
    solveModel({ model, edges, kept: keepAll(edges), aim, known: best }, solver, {
      nodes: 100_000,
      isOver: () => false,
      // The last one handed out is the best that the solver has.
      onPlan: (followers) => (best = followers),
    });
  const wanting = ask({ kind: 'unmet', mostUnmet: Infinity });
  const cost = ask({ kind: 'cost', mostUnmet: exactCost(model, best).unmet });
  return {
    runs: runsOf(best).map((run) => run.map((turn) => model.turnIds[turn] ?? '')),
    unmetBound: wanting.bound,
    bound: (cost.bound / edges.money.perGrain) * 10 ** -model.grains.places,
    complete: wanting.complete && cost.complete,
  };
}
