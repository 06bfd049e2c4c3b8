// A bound under the cost of every plan, and good plans on the way to it: each piece held at an instant is
// given a price, no more on a day than a day's hire. Under fixed prices the best plan is an assignment, and
// its cost is never above that of any plan. The prices are then moved towards where pieces are short.
// Method: Lagrangian relaxation with subgradient steps (Held, Wolfe and Crowder 1974).
import type { Edges } from './edges.ts';
import { bestMatching, type GainGraph } from './matching.ts';
import type { Model } from './model.ts';
import { sampleFrom, samplesOf, type Samples } from './samples.ts';

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
  private readonly places: EdgePlaces;
  private pace = 1;
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
    this.price = new Float64Array(times.length * components.length);
    this.best = new Float64Array(this.price.length);
    this.direction = new Float64Array(this.price.length);
    this.sums = new Float64Array((times.length + 1) * components.length);
    this.gain = new Float64Array(edges.to.length);
    this.places = edgePlaces(model, edges, times);
    this.priceStanding();
  }

  /** One assignment at the present prices, after which the prices move; `goal` is the cost of a known plan. */
  step(goal: number): PricedPlan {
    this.sumPrices();
    const apart = this.costApart();
    const graph = this.gains(apart);
    const matching = bestMatching(graph);
    let bound = 0;
    for (let turn = 0; turn < this.edges.turns; turn += 1) {
      bound += (apart.begin[turn] ?? 0) + (apart.end[turn] ?? 0);
      bound -= (matching.earlier[turn] ?? 0) + (matching.later[turn] ?? 0);
    }
    for (const [cell, price] of this.price.entries()) bound += price * (this.samples.standing[cell] ?? 0);
    if (bound > this.bound) {
      if (bound > this.bound + Math.abs(bound) * 1e-4) this.idle = 0;
      this.bound = bound;
      this.best.set(this.price);
    } else this.idle += 1;
    if (this.idle > 4) {
      this.pace /= 2;
      this.idle = 0;
      this.price.set(this.best);
      this.direction.fill(0);
    }
    const excess = this.excessOf(matching.follower);
    const cost = this.costOf(matching.follower, excess);
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

  /** Prices to begin with: where turns alone are over stock, the day's hire at the day's worst instant. */
  private priceStanding(): void {
    const { day, standing, components } = this.samples;
    const count = components.length;
    for (let index = 0; index < count; index += 1) {
      let [worst, most] = [-1, 0];
      for (let sample = 0; sample <= day.length; sample += 1) {
        if (sample === day.length || day[sample] !== day[sample - 1]) {
          if (worst >= 0) this.price[worst * count + index] = this.caps[index] ?? 0;
          [worst, most] = [-1, 0];
        }
        const over = standing[sample * count + index] ?? 0;
        if (sample < day.length && over > most) [worst, most] = [sample, over];
      }
    }
  }

  private sumPrices(): void {
    const count = this.caps.length;
    for (const [cell, price] of this.price.entries())
      this.sums[cell + count] = (this.sums[cell] ?? 0) + price;
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
        for (let index = 0; index < count && saved > 0; index += 1) {
          const before = pieces[left + index] ?? 0;
          const after = pieces[right + index] ?? 0;
          if (before === 0 && after === 0) continue;
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
        if (saved > 0) {
          to.push(later);
          kept.push(saved);
        }
      }
      start[earlier + 1] = to.length;
    }
    return { turns: edges.turns, start, to: Int32Array.from(to), gain: Float64Array.from(kept) };
  }

  /** Held less stock at every sample under a plan. */
  private excessOf(followers: Int32Array): Float64Array {
    const { edges, model } = this;
    const { pieces, standing, times } = this.samples;
    const { set, strip, assembly, brokenDown, built, takenOut } = this.places;
    const count = this.caps.length;
    const change = new Float64Array((times.length + 1) * count);
    const add = (index: number, quantity: number, from: number, to: number): void => {
      const [first, last] = [from * count + index, to * count + index];
      change[first] = (change[first] ?? 0) + quantity;
      change[last] = (change[last] ?? 0) - quantity;
    };
    const followed = new Uint8Array(edges.turns);
    for (const later of followers) if (later >= 0) followed[later] = 1;
    for (let turn = 0; turn < edges.turns; turn += 1) {
      const own = (model.design[turn] ?? 0) * count;
      const edge = this.edgeOf(turn, followers[turn] ?? -1);
      const later = edge < 0 ? turn : (edges.to[edge] ?? 0);
      const right = (model.design[later] ?? 0) * count;
      for (let index = 0; index < count; index += 1) {
        const quantity = pieces[own + index] ?? 0;
        if (followed[turn] === 0) add(index, quantity, assembly[turn] ?? 0, set[turn] ?? 0);
        if (edge < 0) add(index, quantity, strip[turn] ?? 0, brokenDown[turn] ?? 0);
        else {
          const after = pieces[right + index] ?? 0;
          const common = Math.min(quantity, after);
          add(index, common, strip[turn] ?? 0, set[later] ?? 0);
          add(index, after - common, built[edge] ?? 0, set[later] ?? 0);
          add(index, quantity - common, strip[turn] ?? 0, takenOut[edge] ?? 0);
        }
      }
    }
    const excess = new Float64Array(times.length * count);
    for (const cell of excess.keys()) {
      if (cell >= count) change[cell] = (change[cell] ?? 0) + (change[cell - count] ?? 0);
      excess[cell] = (change[cell] ?? 0) + (standing[cell] ?? 0);
    }
    return excess;
  }

  private edgeOf(earlier: number, later: number): number {
    if (later < 0) return -1;
    let [low, high] = [this.edges.start[earlier] ?? 0, this.edges.start[earlier + 1] ?? 0];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.edges.to[middle] ?? 0) < later) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  private costOf(followers: Int32Array, excess: Float64Array): number {
    const { edges } = this;
    let cost = 0;
    const followed = new Uint8Array(edges.turns);
    for (const later of followers) if (later >= 0) followed[later] = 1;
    for (let turn = 0; turn < edges.turns; turn += 1) {
      if (followed[turn] === 0) cost += edges.assembleLabour[turn] ?? 0;
      const edge = this.edgeOf(turn, followers[turn] ?? -1);
      cost += edge < 0 ? (edges.breakDownLabour[turn] ?? 0) : (edges.labour[edge] ?? 0);
    }
    const count = this.caps.length;
    const { day } = this.samples;
    for (let index = 0; index < count; index += 1) {
      let most = 0;
      for (let sample = 0; sample < day.length; sample += 1) {
        if (sample > 0 && day[sample] !== day[sample - 1]) {
          cost += most * (this.caps[index] ?? 0);
          most = 0;
        }
        most = Math.max(most, excess[sample * count + index] ?? 0);
      }
      cost += most * (this.caps[index] ?? 0);
    }
    return cost;
  }

  /** Moves the prices along the excess and back into their limits: none under 0, a day's sum within its hire. */
  private move(excess: Float64Array, distance: number): void {
    const { direction, price, caps } = this;
    const count = caps.length;
    let length = 0;
    for (const [cell, over] of excess.entries()) {
      const cap = caps[cell % count] ?? 0;
      const idle = (price[cell] ?? 0) <= 0 && over <= 0;
      const towards = idle ? 0 : 0.7 * over * cap + 0.3 * (direction[cell] ?? 0);
      direction[cell] = towards;
      length += towards * towards;
    }
    if (length <= 0) return;
    const stride = (this.pace * distance) / length;
    for (const [cell, towards] of direction.entries()) {
      if (towards === 0) continue;
      price[cell] = Math.max(0, (price[cell] ?? 0) + stride * towards * (caps[cell % count] ?? 0));
    }
    this.limitDays();
  }

  private limitDays(): void {
    const { price, caps } = this;
    const { day } = this.samples;
    const count = caps.length;
    for (let first = 0; first < day.length;) {
      let end = first + 1;
      while (end < day.length && day[end] === day[first]) end += 1;
      for (let index = 0; index < count; index += 1)
        limitSum(price, first * count + index, end * count + index, count, caps[index] ?? 0);
      first = end;
    }
  }
}

/** The nearest point whose entries are not negative and add up to no more than the limit. */
function limitSum(values: Float64Array, from: number, to: number, stride: number, limit: number): void {
  let sum = 0;
  for (let cell = from; cell < to; cell += stride) sum += values[cell] ?? 0;
  while (sum > limit) {
    let positive = 0;
    for (let cell = from; cell < to; cell += stride) if ((values[cell] ?? 0) > 0) positive += 1;
    const cut = (sum - limit) / positive;
    sum = 0;
    for (let cell = from; cell < to; cell += stride) {
      const rest = Math.max(0, (values[cell] ?? 0) - cut);
      values[cell] = rest;
      sum += rest;
    }
    // What remains is a rounding error of the subtraction; a scale below one removes it for certain.
    if (sum > limit && sum - limit < limit * 1e-9) {
      const scale = (limit / sum) * (1 - 1e-12);
      for (let cell = from; cell < to; cell += stride) values[cell] = (values[cell] ?? 0) * scale;
      return;
    }
  }
}

interface EdgePlaces {
  readonly set: Int32Array;
  readonly strip: Int32Array;
  readonly assembly: Int32Array;
  readonly brokenDown: Int32Array;
  readonly built: Int32Array;
  readonly takenOut: Int32Array;
}

function edgePlaces(model: Model, edges: Edges, times: Float64Array): EdgePlaces {
  const known = new Map<number, number>();
  const place = (at: number): number => {
    const found = known.get(at);
    if (found !== undefined) return found;
    const made = sampleFrom(times, at);
    known.set(at, made);
    return made;
  };
  const places = (list: Float64Array): Int32Array => Int32Array.from(list, place);
  return {
    set: places(model.from),
    strip: places(model.to),
    assembly: places(edges.assemblyFrom),
    brokenDown: places(edges.brokenDownAt),
    built: places(edges.builtFrom),
    takenOut: places(edges.takenOutAt),
  };
}

function unmetPriceOf(model: Model, edges: Edges): number {
  let dearest = 0;
  for (const hire of edges.hire) dearest = Math.max(dearest, hire);
  let labour = 0;
  for (const turn of model.design.keys())
    labour += (edges.assembleLabour[turn] ?? 0) + (edges.breakDownLabour[turn] ?? 0);
  return Math.max(20 * dearest, labour / Math.max(1, edges.turns) / 5, 1 / 1024);
}
