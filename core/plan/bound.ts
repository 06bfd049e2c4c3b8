// The bound a plan answers with: a whole number of minor units that the best plan cannot cost less than,
// and never a claim that more was proved than was.
import type { Edges } from './edges.ts';
import { grainsOfCost, type ExactCost } from './cost.ts';
import { holdsByComponent, stretchesOf } from './excess.ts';
import { excessDays } from './hire-days.ts';
import { standingHolds } from './holding.ts';
import type { Sketch } from './instant-plan.ts';
import type { Model } from './model.ts';
import { roundDown } from './money.ts';

/** What was proved besides the prices. */
export interface Proved {
  /** No plan with as few pieces wanting costs less, in the money of the search; -Infinity where nothing more is known. */
  readonly least: number;
  /** Whether no plan leaves fewer pieces wanting. */
  readonly unmetIsLeast: boolean;
}

export function boundOf(
  model: Model,
  edges: Edges,
  sketch: Sketch,
  cost: ExactCost,
  total: number,
  proved: Proved = { least: -Infinity, unmetIsLeast: false },
): number {
  const { places } = model.grains;
  const grains = grainsOfCost(cost);
  if (sketch.complete) {
    if (edges.money.exact) return Number(roundDown(grains, places));
    // The search compared sums of doubles: what it found may be dearer than the best by their last digits.
    const minor = Number(grains) / 10 ** places;
    return Math.max(0, Math.floor(minor - 0.001 - minor * 1e-9));
  }
  const { prices } = sketch;
  let least = prices.bound - prices.unmetPrice * cost.unmet;
  if (cost.unmet > 0) {
    const apart = prices.withoutUnmet();
    const steps = apart.stepsFor(8_000_000, 3, 12);
    for (let step = 0; step < steps; step += 1) apart.step(Number(grains) * edges.money.perGrain);
    least = Math.max(least, apart.bound);
  }
  least = Math.max(least, proved.least);
  // Sums of doubles are off by far less than a billionth.
  const careful = least - Math.abs(least) * 1e-9 - edges.money.tolerance / 100;
  // Every plan costs a whole number of grains, so that none costs less than the next one.
  const minor = edges.money.exact ? Math.ceil(careful) / 10 ** places : careful;
  const bound = Math.max(0, Math.min(Math.floor(minor), Number(roundDown(grains, places))));
  // A plan may only be called the best where no plan leaves fewer pieces wanting.
  return cost.unmet > standingUnmet(model) && !proved.unmetIsLeast ? Math.min(bound, total - 2) : bound;
}

/** Pieces short that no plan can help: turns and loose turns alone hold more than there is. */
export function standingUnmet(model: Model): number {
  let unmet = 0;
  for (const [component, holds] of holdsByComponent(model, standingHolds(model)).entries()) {
    if (model.hire[component] === null) unmet += excessDays(model, stretchesOf(model, component, holds));
  }
  return unmet;
}
