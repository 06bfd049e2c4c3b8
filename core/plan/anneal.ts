// Betters a plan by small changes by chance, at first also some that make it dearer, later only few of them (simulated
// annealing, Kirkpatrick et al. 1983), and between them steps of the prices for the bound. The best plan seen is kept.
import type { Edges } from './edges.ts';
import type { SearchCost } from './grid.ts';
import type { Sketch } from './instant-plan.ts';
import { take, type Standing } from './local-search.ts';
import { cutAfter, insertBetween, joinAndCut, swapTails, type Move } from './moves.ts';
import type { PricedPlan } from './prices.ts';
import { randomFrom } from './random.ts';

export interface Effort {
  readonly seed: number;
  /** The search ends after so many steps; a step is one change tried. */
  readonly steps: number;
  /** How much of the time given is used up, from 0 to 1; asked now and then. */
  readonly used: () => number;
}

/** One step of the prices to so many changes tried. */
export const stepsPerPrice = 200;

export function anneal(
  edges: Edges,
  sketch: Sketch,
  effort: Effort,
): { best: Int32Array; proof: PricedPlan } {
  const { standing, order, prices } = sketch;
  const random = randomFrom(effort.seed);
  let proof = sketch.proof;
  let best = Int32Array.from(standing.chains.follower);
  let bestCost: SearchCost = { ...standing.cost };
  const weight = prices.unmetPrice;
  const gap = Math.max(0, standing.cost.cost + standing.cost.unmet * weight - prices.bound);
  const warmest = (2 * gap) / Math.max(1, edges.turns);
  let used = 0;
  for (let step = 0; step < effort.steps; step += 1) {
    if (step % 64 === 0)
      used = Math.max(effort.used(), Number.isFinite(effort.steps) ? step / effort.steps : 0);
    if (used >= 1) break;
    if (step % stepsPerPrice === 0) {
      const next = prices.step(bestCost.cost + bestCost.unmet * weight);
      if (next.bound > proof.bound) proof = next;
      if (bestCost.unmet === 0 && bestCost.cost - prices.bound <= edges.money.tolerance) break;
    }
    const move = chance(standing, order, random);
    if (move === undefined) continue;
    const change = standing.grid.change(move.parts);
    const dearer = change.cost + change.unmet * weight;
    const warmth = warmest * (1 - used) ** 2;
    if (dearer > 0 && random() >= Math.exp(-dearer / Math.max(warmth, 1e-12))) continue;
    take(standing, move, change);
    const { unmet, cost } = standing.cost;
    if (
      unmet < bestCost.unmet ||
      (unmet === bestCost.unmet && cost < bestCost.cost - edges.money.tolerance)
    ) {
      best = Int32Array.from(standing.chains.follower);
      bestCost = { unmet, cost };
    }
  }
  return { best, proof };
}

function chance({ grid, chains }: Standing, order: Int32Array, random: () => number): Move | undefined {
  const kind = random();
  // Where nothing can follow anything there is no edge to take.
  if (kind < 0.05 || order.length === 0)
    return cutAfter(grid, chains, Math.floor(random() * chains.follower.length));
  // The square favours the front of the list, where the edges stand that save most.
  const edge = order[Math.floor(random() ** 2 * order.length)] ?? 0;
  if (kind < 0.55) return swapTails(grid, chains, edge) ?? joinAndCut(grid, chains, edge);
  return kind < 0.75 ? joinAndCut(grid, chains, edge) : insertBetween(grid, chains, edge);
}
