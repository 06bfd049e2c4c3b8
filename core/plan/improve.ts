// Betters an instant plan for as long as it is given: a small one is searched to the end, any other changed by chance.
import { anneal, type Effort, stepsPerPrice } from './anneal.ts';
import type { Edges } from './edges.ts';
import { exactSearch } from './exact-search.ts';
import { polish, type Sketch } from './instant-plan.ts';
import { descend, type Standing } from './local-search.ts';
import type { Model } from './model.ts';
import { chainsOf } from './moves.ts';

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

function lastPolish(sketch: Sketch, best: Int32Array): Sketch {
  const { grid } = sketch.standing;
  const standing: Standing = { grid, chains: chainsOf(best), cost: grid.lay(best) };
  descend(standing, sketch.order, sketch.proof.gain, { slack: Infinity, passes: 10 });
  return { ...sketch, standing };
}
