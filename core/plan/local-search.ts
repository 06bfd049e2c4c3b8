// Betters a plan by small changes until none of those tried helps: pieces short that cannot be hired first,
// then cost, then fewer runs, then the order of the input.
import { edgeBetween } from './edges.ts';
import type { Grid, SearchCost } from './grid.ts';
import {
  carryOut,
  cutAfter,
  insertBetween,
  joinAndCut,
  runsChange,
  swapTails,
  type Chains,
  type Move,
} from './moves.ts';

/** A plan on a grid, with what it costs. */
export interface Standing {
  readonly grid: Grid;
  readonly chains: Chains;
  cost: SearchCost;
}

export interface SearchLimits {
  /** Moves that lose more than this by the prices are not tried. */
  readonly slack: number;
  readonly passes: number;
}

const kinds = [swapTails, joinAndCut, insertBetween];

/** Tries the edges in the order given, again and again while something got better. */
export function descend(
  standing: Standing,
  order: Int32Array,
  gain: Float64Array,
  limits: SearchLimits,
): void {
  const { grid, chains } = standing;
  for (let pass = 0; pass < limits.passes; pass += 1) {
    let bettered = false;
    for (const edge of order) {
      const earlier = grid.edges.earlier[edge] ?? 0;
      const later = grid.edges.to[edge] ?? 0;
      if (chains.follower[earlier] === later || lossOf(grid, chains, gain, edge) > limits.slack) continue;
      for (const kind of kinds) {
        const move = kind(grid, chains, edge);
        if (move !== undefined && takeIfBetter(standing, move)) {
          bettered = true;
          break;
        }
      }
    }
    for (const turn of chains.follower.keys()) {
      const move = cutAfter(grid, chains, turn);
      if (move !== undefined && takeIfBetter(standing, move)) bettered = true;
    }
    if (!bettered) return;
  }
}

/** Carries a move out and answers true where it makes the plan better. */
function takeIfBetter(standing: Standing, move: Move): boolean {
  const change = standing.grid.change(move.parts);
  if (!isBetter(standing, move, change)) return false;
  take(standing, move, change);
  return true;
}

export function take(standing: Standing, move: Move, change: SearchCost): void {
  standing.grid.apply(move.parts);
  carryOut(standing.chains, move);
  standing.cost = { unmet: standing.cost.unmet + change.unmet, cost: standing.cost.cost + change.cost };
}

function isBetter({ grid, chains }: Standing, move: Move, { unmet, cost }: SearchCost): boolean {
  if (unmet !== 0) return unmet < 0;
  const { tolerance } = grid.edges.money;
  if (Math.abs(cost) > tolerance) return cost < 0;
  const runs = runsChange(move);
  if (runs !== 0) return runs < 0;
  let first = Infinity;
  let sooner = false;
  for (const [turn, later] of move.followers) {
    const old = chains.follower[turn] ?? -1;
    if (turn >= first || later === old) continue;
    first = turn;
    sooner = later >= 0 && (old < 0 || later < old);
  }
  return sooner;
}

/** What the prices say a use of the edge loses, the mending not counted where it is unknown. */
function lossOf(grid: Grid, chains: Chains, gain: Float64Array, edge: number): number {
  const { edges } = grid;
  const earlier = edges.earlier[edge] ?? 0;
  const later = edges.to[edge] ?? 0;
  const after = chains.follower[earlier] ?? -1;
  const before = chains.leader[later] ?? -1;
  let loss = -(gain[edge] ?? 0);
  if (after >= 0) loss += gain[edgeBetween(edges, earlier, after)] ?? 0;
  if (before >= 0) loss += gain[edgeBetween(edges, before, later)] ?? 0;
  if (after >= 0 && before >= 0) {
    const mend = edgeBetween(edges, before, after);
    if (mend >= 0) loss -= Math.max(0, gain[mend] ?? 0);
  }
  return loss;
}
