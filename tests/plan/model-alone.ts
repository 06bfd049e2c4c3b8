// The mixed-integer model of a plan asked by itself, begun from the plainest plan: only so is it the model and not the search
// around it that finds a plan of few turns. With everything in it, or without what prices rule out.
import type { PlanInput } from '../../core/plan/contract.ts';
import { exactCost, grainsOfCost } from '../../core/plan/cost.ts';
import { edgesOf, type Edges } from '../../core/plan/edges.ts';
import { runsOf } from '../../core/plan/holding.ts';
import { keepAll, keptUnder, type Kept } from '../../core/plan/mip/kept.ts';
import type { Aim } from '../../core/plan/mip/plan-model.ts';
import { solveModel, type ModelAnswer } from '../../core/plan/mip/solve-model.ts';
import type { PlanSolver } from '../../core/plan/mip/solver.ts';
import type { Model } from '../../core/plan/model.ts';
import { readModel } from '../../core/plan/plan-reuse.ts';
import { Prices } from '../../core/plan/prices.ts';
import { startOf } from '../../core/plan/start-plan.ts';

interface Alone {
  readonly runs: string[][];
  /** Piece-days, and minor units, that no plan is under. */
  readonly unmetBound: number;
  readonly bound: number;
  readonly complete: boolean;
  /** How many follows were ruled out before. */
  readonly leftOut: number;
}

const priceSteps = 15;

export function modelAlone(input: PlanInput, solver: PlanSolver, parts: 'all' | 'priced'): Alone {
  const read = readModel(input);
  if (!read.ok) throw new Error(read.error.message);
  const model = read.value;
  const edges = edgesOf(model);
  let best = startOf(model, edges, []) ?? new Int32Array(edges.turns);
  const ask = (aim: Aim, kept: Kept): ModelAnswer =>
    solveModel({ model, edges, kept, aim, known: best }, solver, {
      nodes: 100_000,
      isOver: () => false,
      secondsLeft: () => Infinity,
      onPlan: (followers) => {
        const [found, known] = [exactCost(model, followers), exactCost(model, best)];
        const isCheaper = grainsOfCost(found) < grainsOfCost(known);
        if (found.unmet < known.unmet || (found.unmet === known.unmet && isCheaper)) best = followers;
      },
    });
  const wanting = ask({ kind: 'unmet', mostUnmet: Infinity }, keepAll(edges));
  const known = exactCost(model, best);
  const knownCost = Number(grainsOfCost(known)) * edges.money.perGrain;
  const kept = parts === 'all' ? keepAll(edges) : keptByPrices(model, edges, knownCost, known.unmet);
  const cost = ask({ kind: 'cost', mostUnmet: known.unmet }, kept);
  // What was ruled out costs no less than the plan by which it was.
  const least = parts === 'all' ? cost.bound : Math.min(cost.bound, knownCost);
  return {
    runs: runsOf(best).map((run) => run.map((turn) => model.turnIds[turn] ?? '')),
    unmetBound: wanting.bound,
    bound: (least / edges.money.perGrain) * 10 ** -model.grains.places,
    complete: wanting.complete && (cost.complete || kept.edges.length < edges.to.length),
    leftOut: edges.to.length - kept.edges.length,
  };
}

function keptByPrices(model: Model, edges: Edges, cost: number, unmet: number): Kept {
  const prices = new Prices(model, edges);
  const limit = cost + unmet * prices.unmetPrice;
  let proof = prices.step(limit);
  for (let step = 1; step < priceSteps; step += 1) {
    const next = prices.step(limit);
    if (next.bound > proof.bound) proof = next;
  }
  return keptUnder(edges, proof, limit);
}
