// Betters an instant plan for as long as it is given: small changes by chance, at first also some that
// make the plan dearer, later only few of them (simulated annealing, Kirkpatrick et al. 1983), and between
// them steps of the prices for the bound. The best plan seen is kept.
import type { Edges } from './edges.ts';
import { exactSearch } from './exact-search.ts';
import type { SearchCost } from './grid.ts';
import { polish, type Sketch } from './instant-plan.ts';
import { descend, take, type Standing } from './local-search.ts';
import type { Model } from './model.ts';
import { chainsOf, cutAfter, insertBetween, joinAndCut, swapTails, type Move } from './moves.ts';
import type { PricedPlan } from './prices.ts';
import { randomFrom } from './random.ts';

export interface Effort {
  readonly seed: number;
  /** The search ends after so many steps; a step is one change tried. */
  readonly steps: number;
  /** How much of the time given is used up, from 0 to 1; asked now and then. */
  readonly used: () => number;
}

const stepsPerPrice = 200;
const candidatesPerTurn = 16;
const exactTurns = 24;

export function improve(model: Model, edges: Edges, sketch: Sketch, effort: Effort): Sketch {
  if (sketch.complete || edges.to.length === 0 || effort.steps === 0) return sketch;
  const { prices } = sketch;
  const start = sketch.standing.chains.follower;
  let now = polish(
    model,
    edges,
    prices,
    start,
    sketch.proof,
    edges.turns <= 80 ? edges.turns : candidatesPerTurn,
  );
  if (now.complete) return now;
  if (edges.turns <= exactTurns && now.order.length === edges.to.length)
    now = searchToTheEnd(model, edges, now, effort);
  if (now.complete) return now;
  const { best, proof } = anneal(edges, now, effort);
  return lastPolish({ ...now, proof }, best);
}

/** A third of the steps, but never more than seconds' worth, for the search that can prove its plan the best. */
function searchToTheEnd(model: Model, edges: Edges, sketch: Sketch, effort: Effort): Sketch {
  const { grid, chains, cost } = sketch.standing;
  let proof = sketch.proof;
  for (let step = 0; step < 60 && effort.used() < 0.2 && step * stepsPerPrice < effort.steps; step += 1) {
    const next = sketch.prices.step(cost.cost + cost.unmet * sketch.prices.unmetPrice);
    if (next.bound > proof.bound) proof = next;
  }
  const most = Math.min(60_000, Math.ceil(effort.steps / 3));
  const found = exactSearch(model, grid, { followers: chains.follower, cost }, proof, most);
  const standing = { grid, chains: chainsOf(found.followers), cost: grid.lay(found.followers) };
  return { ...sketch, standing, proof, complete: found.complete && edges.turns > 0 };
}

function anneal(edges: Edges, sketch: Sketch, effort: Effort): { best: Int32Array; proof: PricedPlan } {
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
  if (kind < 0.05) return cutAfter(grid, chains, Math.floor(random() * chains.follower.length));
  // The square favours the front of the list, where the edges stand that save most.
  const edge = order[Math.floor(random() ** 2 * order.length)] ?? 0;
  if (kind < 0.55) return swapTails(grid, chains, edge) ?? joinAndCut(grid, chains, edge);
  return kind < 0.75 ? joinAndCut(grid, chains, edge) : insertBetween(grid, chains, edge);
}

function lastPolish(sketch: Sketch, best: Int32Array): Sketch {
  const { grid } = sketch.standing;
  const standing: Standing = { grid, chains: chainsOf(best), cost: grid.lay(best) };
  descend(standing, sketch.order, sketch.proof.gain, { slack: Infinity, passes: 10 });
  return { ...sketch, standing };
}
