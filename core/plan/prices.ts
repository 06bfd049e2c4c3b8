// A bound under the cost of every plan, and good plans on the way to it: each piece held at an instant is
// given a price, no more on a day than a day's hire. Under fixed prices the best plan is an assignment, and
// its cost is never above that of any plan. The prices are then moved towards where pieces are short.
// Method: Lagrangian relaxation with subgradient steps (Held, Wolfe and Crowder 1974).
import type { Edges } from './edges.ts';
import { bestMatching, type GainGraph, type Matching } from './matching.ts';
import type { Model } from './model.ts';
import { PairPieces } from './pair-pieces.ts';
import { firstPrices, limitDays, unmetPriceOf } from './price-limits.ts';
import { costAtSamples, edgePlaces, excessAtSamples, type EdgePlaces } from './sampled-plan.ts';
import { samplesOf, type Samples } from './samples.ts';

/** One step of the search for prices. */
export interface PricedPlan {
  /** No plan costs less than this, a piece short that cannot be hired counted at `unmetPrice` a day. */
  readonly bound: number;
  readonly followers: Int32Array;
  /** What the plan costs as far as the samples show. */
  readonly cost: number;
  /** How much more than the bound a plan costs that leaves the turn without follower, or as a beginning. */
  readonly earlier: Float64Array;
  readonly later: Float64Array;
  /** What each edge saves over breaking down and assembling anew at the prices of the step. */
  readonly gain: Float64Array;
}

/** A long first stride: most of it is cut off at the limits of the prices. Found by trial on jobs made by a seed. */
const firstPace = 20;

export class Prices {
  readonly samples: Samples;
  /** What a piece that cannot be hired counts a day in the bound. */
  readonly unmetPrice: number;
  /** The best bound so far. */
  bound = -Infinity;
  /** What each edge saves over breaking down and assembling anew, at the prices of the last step. */
  readonly gain: Float64Array;
  private readonly model: Model;
  private readonly edges: Edges;
  private readonly caps: Float64Array;
  private readonly price: Float64Array;
  private readonly best: Float64Array;
  private readonly direction: Float64Array;
  private readonly sums: Float64Array;
  private readonly held: Float64Array;
  private readonly places: EdgePlaces;
  private readonly pairs: PairPieces;
  private pace = firstPace;
  private idle = 0;

  /** `unmetPrice`: what a piece that cannot be hired counts a day; 0 leaves it out of the bound. */
  constructor(model: Model, edges: Edges, unmetPrice = unmetPriceOf(model, edges)) {
    this.model = model;
    this.edges = edges;
    this.samples = samplesOf(model, edges);
    this.unmetPrice = unmetPrice;
    const { components, times } = this.samples;
    this.caps = Float64Array.from(components, (component) =>
      edges.cannotHire[component] === 1 ? this.unmetPrice : (edges.hire[component] ?? 0),
    );
    this.price = firstPrices(this.samples, this.caps);
    this.best = new Float64Array(this.price.length);
    this.direction = new Float64Array(this.price.length);
    this.sums = new Float64Array((times.length + 1) * components.length);
    this.held = new Float64Array(this.sums.length);
    this.gain = new Float64Array(edges.to.length);
    this.places = edgePlaces(model, edges, times);
    this.pairs = new PairPieces(this.samples.pieces, components.length);
  }

  /** The best prices so far, but with nothing for pieces that cannot be hired: for a bound of the cost alone. */
  withoutUnmet(): Prices {
    const apart = new Prices(this.model, this.edges, 0);
    for (let cell = 0; cell < apart.price.length; cell += 1) {
      const cap = apart.caps[cell % apart.caps.length] ?? 0;
      apart.price[cell] = cap === 0 ? 0 : (this.best[cell] ?? 0);
    }
    return apart;
  }

  /** As many steps as so much work allows, within limits. A step looks at every edge and every sample. */
  stepsFor(work: number, least: number, most: number): number {
    const { components, times } = this.samples;
    const each = (this.edges.to.length + 4 * times.length) * components.length;
    return Math.max(least, Math.min(most, Math.floor(work / Math.max(1, each))));
  }

  /** One assignment at the present prices, after which the prices move; `goal` is the cost of a known plan. */
  step(goal: number): PricedPlan {
    this.sumPrices();
    const apart = this.costApart();
    const graph = this.gains(apart);
    const matching = bestMatching(graph);
    this.useFixed(matching);
    let bound = 0;
    for (let turn = 0; turn < this.edges.turns; turn += 1) {
      bound += (apart.begin[turn] ?? 0) + (apart.end[turn] ?? 0);
      bound -= (matching.earlier[turn] ?? 0) + (matching.later[turn] ?? 0);
    }
    const { price } = this;
    const { standing } = this.samples;
    for (let cell = 0; cell < price.length; cell += 1) bound += (price[cell] ?? 0) * (standing[cell] ?? 0);
    if (bound > this.bound) {
      if (bound > this.bound + Math.abs(bound) * 1e-4) this.idle = 0;
      this.bound = bound;
      this.best.set(this.price);
    } else this.idle += 1;
    if (this.idle > 4) {
      this.pace *= 0.6;
      this.idle = 0;
      this.price.set(this.best);
      this.direction.fill(0);
    }
    const excess = excessAtSamples(
      this.model,
      this.edges,
      this.samples,
      this.places,
      matching.follower,
      this.held,
    );
    const cost = costAtSamples(this.edges, this.samples, this.caps, matching.follower, excess);
    this.move(excess, Math.max(0, Math.min(goal, cost) - bound));
    return {
      bound,
      followers: matching.follower,
      cost,
      earlier: matching.earlier,
      later: matching.later,
      gain: this.gain.slice(),
    };
  }

  /** Fixed follows are used whatever they save, even less than nothing; no other edge touches their turns on that side. */
  private useFixed({ follower, earlier }: Matching): void {
    const { edges } = this;
    for (const [edge, isFixed] of edges.fixed.entries()) {
      if (isFixed === 0) continue;
      const turn = edges.earlier[edge] ?? 0;
      follower[turn] = edges.to[edge] ?? -1;
      earlier[turn] = this.gain[edge] ?? 0;
    }
  }

  private sumPrices(): void {
    const { price, sums } = this;
    const count = this.caps.length;
    for (let cell = 0; cell < price.length; cell += 1)
      sums[cell + count] = (sums[cell] ?? 0) + (price[cell] ?? 0);
  }

  /** What a turn costs that begins a run, or ends one. */
  private costApart(): { begin: Float64Array; end: Float64Array } {
    const { edges, model, sums } = this;
    const count = this.caps.length;
    const begin = Float64Array.from(edges.assembleLabour);
    const end = Float64Array.from(edges.breakDownLabour);
    const { set, strip, assembly, brokenDown } = this.places;
    for (let turn = 0; turn < edges.turns; turn += 1) {
      const own = (model.design[turn] ?? 0) * count;
      for (let index = 0; index < count; index += 1) {
        const quantity = this.samples.pieces[own + index] ?? 0;
        if (quantity === 0) continue;
        const before =
          (sums[(set[turn] ?? 0) * count + index] ?? 0) - (sums[(assembly[turn] ?? 0) * count + index] ?? 0);
        const after =
          (sums[(brokenDown[turn] ?? 0) * count + index] ?? 0) -
          (sums[(strip[turn] ?? 0) * count + index] ?? 0);
        begin[turn] = (begin[turn] ?? 0) + quantity * before;
        end[turn] = (end[turn] ?? 0) + quantity * after;
      }
    }
    return { begin, end };
  }

  /** The edges that save something at the present prices. Hire only takes from a saving, so most end early. */
  private gains({ begin, end }: { begin: Float64Array; end: Float64Array }): GainGraph {
    const { edges, model, sums, gain } = this;
    const { pieces } = this.samples;
    const { set, strip, built, takenOut } = this.places;
    const count = this.caps.length;
    const start = new Int32Array(edges.turns + 1);
    const to: number[] = [];
    const kept: number[] = [];
    for (let earlier = 0; earlier < edges.turns; earlier += 1) {
      const left = (model.design[earlier] ?? 0) * count;
      const stripped = (strip[earlier] ?? 0) * count;
      for (let edge = edges.start[earlier] ?? 0; edge < (edges.start[earlier + 1] ?? 0); edge += 1) {
        const later = edges.to[edge] ?? 0;
        const right = (model.design[later] ?? 0) * count;
        const setAt = (set[later] ?? 0) * count;
        const builtAt = (built[edge] ?? 0) * count;
        const outAt = (takenOut[edge] ?? 0) * count;
        let saved = (end[earlier] ?? 0) + (begin[later] ?? 0) - (edges.labour[edge] ?? 0);
        // What a fixed follow saves is wanted to the end, however little it is.
        const enough = edges.fixed[edge] === 1 ? -Infinity : 0;
        const parts = this.pairs.of(model.design[earlier] ?? 0, model.design[later] ?? 0);
        for (let part = 0; part < parts.length && saved > enough; part += 1) {
          const index = parts[part] ?? 0;
          const before = pieces[left + index] ?? 0;
          const after = pieces[right + index] ?? 0;
          const sumStrip = sums[stripped + index] ?? 0;
          const sumSet = sums[setAt + index] ?? 0;
          if (before < after) {
            saved -=
              before * (sumSet - sumStrip) + (after - before) * (sumSet - (sums[builtAt + index] ?? 0));
          } else {
            saved -= after * (sumSet - sumStrip) + (before - after) * ((sums[outAt + index] ?? 0) - sumStrip);
          }
        }
        gain[edge] = saved;
        if (saved > 0 && edges.fixed[edge] === 0) {
          to.push(later);
          kept.push(saved);
        }
      }
      start[earlier + 1] = to.length;
    }
    return { turns: edges.turns, start, to: Int32Array.from(to), gain: Float64Array.from(kept) };
  }

  /** Moves the prices along the excess and back into their limits: none under 0, a day's sum within its hire. */
  private move(excess: Float64Array, distance: number): void {
    const { direction, price, caps } = this;
    const count = caps.length;
    let length = 0;
    for (let first = 0; first < excess.length; first += count) {
      for (let index = 0; index < count; index += 1) {
        const cell = first + index;
        const over = excess[cell] ?? 0;
        const idle = over <= 0 && (price[cell] ?? 0) <= 0;
        const towards = idle ? 0 : 0.15 * over * (caps[index] ?? 0) + 0.85 * (direction[cell] ?? 0);
        direction[cell] = towards;
        length += towards * towards;
      }
    }
    if (length <= 0) return;
    const stride = (this.pace * distance) / length;
    for (let first = 0; first < excess.length; first += count) {
      for (let index = 0; index < count; index += 1) {
        const towards = direction[first + index] ?? 0;
        if (towards === 0) continue;
        price[first + index] = Math.max(
          0,
          (price[first + index] ?? 0) + stride * towards * (caps[index] ?? 0),
        );
      }
    }
    limitDays(price, this.samples.day, caps);
  }
}
