// The plan answered at once: some steps of prices give good plans and a bound, small changes better the
// best of them, and a small input is searched to the end. The effort depends on the size alone, so the
// same input always gives the same plan.
import { anneal } from './anneal.ts';
import { candidateEdges } from './candidates.ts';
import { edgeBetween, type Edges } from './edges.ts';
import { exactSearch } from './exact-search.ts';
import { Grid } from './grid.ts';
import { firstTurns } from './holding.ts';
import { descend, type Standing } from './local-search.ts';
import type { Model } from './model.ts';
import { chainsOf } from './moves.ts';
import { Prices, type PricedPlan } from './prices.ts';

export interface Sketch {
  readonly prices: Prices;
  readonly standing: Standing;
  /** Edges on the grid, those first that save most. */
  readonly order: Int32Array;
  /** Whether every plan was looked at or ruled out. */
  readonly complete: boolean;
  /** The step of the prices with the best bound. */
  readonly proof: PricedPlan;
}

const exactTurns = 12;
const exactChoices = 6000;
/** Up to so many turns every follow is tried, and some changes besides. */
const wholeTurns = 60;
const shakes = 2000;

/** @param start a plan known before: the answer is never dearer than it, nor than it would be without it */
export function instantPlan(model: Model, edges: Edges, start?: Int32Array): Sketch {
  const prices = new Prices(model, edges);
  let best = prices.step(Infinity);
  let proof = best;
  const steps = prices.stepsFor(30_000_000, 8, 40);
  for (let step = 1; step < steps && best.cost - prices.bound > edges.money.tolerance; step += 1) {
    const next = prices.step(best.cost);
    if (next.cost < best.cost) best = next;
    if (next.bound > proof.bound) proof = next;
  }
  const perTurn = edges.turns <= wholeTurns ? edges.turns : 12;
  const fresh = polish(model, edges, prices, best.followers, proof, perTurn);
  if (fresh.complete) return fresh;
  const sketch = edges.turns <= wholeTurns ? shaken(edges, fresh) : fresh;
  if (start === undefined) return sketch;
  const begun = polish(model, edges, prices, start, proof, perTurn);
  return begun.complete ? begun : betterOf(sketch, begun);
}

/** Some thousand changes by chance, which take some milliseconds; the same ones every time. */
function shaken(edges: Edges, sketch: Sketch): Sketch {
  const { grid } = sketch.standing;
  const { best, proof } = anneal(edges, sketch, { seed: 1, steps: shakes, used: () => 0 });
  const standing: Standing = { grid, chains: chainsOf(best), cost: grid.lay(best) };
  descend(standing, sketch.order, proof.gain, { slack: Infinity, passes: 3 });
  return { ...sketch, standing, proof };
}

/** Of plans of one cost the one with fewer runs, then the one that began from what was known: less changes. */
function betterOf(fresh: Sketch, begun: Sketch): Sketch {
  const [one, other] = [fresh.standing, begun.standing];
  const { tolerance } = one.grid.edges.money;
  if (one.cost.unmet !== other.cost.unmet) return one.cost.unmet < other.cost.unmet ? fresh : begun;
  const difference = one.cost.cost - other.cost.cost;
  if (Math.abs(difference) > tolerance) return difference < 0 ? fresh : begun;
  return firstTurns(one.chains.follower).length < firstTurns(other.chains.follower).length ? fresh : begun;
}

/** Betters a plan on a grid of its own; `perTurn` edges of every turn are tried. */
export function polish(
  model: Model,
  edges: Edges,
  prices: Prices,
  followers: Int32Array,
  proof: PricedPlan,
  perTurn: number,
): Sketch {
  const keep = Array.from(followers.entries(), ([turn, later]) =>
    later < 0 ? -1 : edgeBetween(edges, turn, later),
  );
  const candidates = candidateEdges(edges, proof.gain, perTurn, keep);
  const grid = new Grid(model, edges, candidates);
  const order = Int32Array.from(candidates).sort(
    (left, right) => (proof.gain[right] ?? 0) - (proof.gain[left] ?? 0) || left - right,
  );
  let standing: Standing = { grid, chains: chainsOf(followers), cost: grid.lay(followers) };
  const gap = standing.cost.cost + standing.cost.unmet * prices.unmetPrice - prices.bound;
  const small = candidates.length === edges.to.length;
  descend(standing, order, proof.gain, { slack: small ? Infinity : gap * 0.1, passes: small ? 20 : 3 });
  let complete = false;
  if (small && edges.turns <= exactTurns) {
    const found = exactSearch(
      model,
      grid,
      { followers: standing.chains.follower, cost: standing.cost },
      proof,
      exactChoices,
    );
    complete = found.complete;
    standing = { grid, chains: chainsOf(found.followers), cost: grid.lay(found.followers) };
  }
  return { prices, standing, order, complete, proof };
}
