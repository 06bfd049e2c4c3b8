// Solves the model of a plan: first without regard to whole numbers, adding the rows that the answer breaks until it breaks
// none, then in whole numbers, again until none is broken. Every plan found on the way is handed out, to be costed exactly.
import type { Edges } from '../edges.ts';
import type { Model } from '../model.ts';
import { partsOf } from '../parts.ts';
import type { Kept } from './kept.ts';
import { type Aim, PlanModel } from './plan-model.ts';
import type { OpenModel, PlanSolver } from './solver.ts';

export interface Question {
  readonly model: Model;
  readonly edges: Edges;
  readonly kept: Kept;
  readonly aim: Aim;
  /** A plan known before. */
  readonly known: Int32Array;
}

export interface Limits {
  readonly nodes: number;
  readonly isOver: () => boolean;
  /** Infinity where no clock ends the search. */
  readonly secondsLeft: () => number;
  /** Asked of every plan as it is found. */
  readonly onPlan: (followers: Int32Array) => void;
}

export interface ModelAnswer {
  /** No plan of what was kept is under it (piece-days or money of the search); the solver's tolerance is in it. */
  readonly bound: number;
  /** Whether the best of what was kept was found. */
  readonly complete: boolean;
}

const mostRounds = 80;

export function solveModel(question: Question, solver: PlanSolver, limits: Limits): ModelAnswer {
  const { model, edges, kept, aim } = question;
  return solver.withModel((open) => {
    const plan = new PlanModel(open, model, edges, kept, aim);
    const relaxed = solveRelaxed(open, plan, limits);
    const { bound, complete } = limits.isOver()
      ? { bound: relaxed, complete: false }
      : solveWhole(open, plan, question, limits, relaxed);
    return { bound: bound * plan.unit, complete };
  });
}

function solveRelaxed(open: OpenModel, plan: PlanModel, { isOver, secondsLeft }: Limits): number {
  let bound = -Infinity;
  for (let round = 0; round < mostRounds && !isOver(); round += 1) {
    const answer = open.relaxed(isOver, secondsLeft());
    if (answer === null) break;
    bound = Math.max(bound, answer.value);
    if (plan.addBroken(answer.values) === 0) break;
  }
  return bound;
}

function solveWhole(
  open: OpenModel,
  plan: PlanModel,
  { edges, known }: Question,
  { nodes, isOver, secondsLeft, onPlan }: Limits,
  relaxed: number,
): ModelAnswer {
  let bound = relaxed;
  let best = known;
  const take = (values: Float64Array): void => {
    const followers = plan.followersIn(values);
    if (followers === null) return;
    best = followers;
    onPlan(followers);
  };
  for (let round = 0; round < mostRounds; round += 1) {
    const start = plan.valuesOf(partsOf(edges, best));
    const found = open.whole({
      nodes,
      isOver,
      seconds: secondsLeft(),
      onFound: take,
      ...(start === null ? {} : { start }),
    });
    bound = Math.max(bound, found.bound);
    if (found.values === null) return { bound, complete: false };
    take(found.values);
    if (plan.addBroken(found.values) === 0) return { bound, complete: found.complete };
    if (!found.complete) break;
  }
  return { bound, complete: false };
}
