// A plan seen at the samples of the bound: what it holds over stock, and what it costs as far as they show.
import { edgeBetween, type Edges } from './edges.ts';
import type { Model } from './model.ts';
import { sampleFrom, type Samples } from './samples.ts';

/** The first sample at or after each time of a turn or an edge. */
export interface EdgePlaces {
  readonly set: Int32Array;
  readonly strip: Int32Array;
  readonly assembly: Int32Array;
  readonly brokenDown: Int32Array;
  readonly built: Int32Array;
  readonly takenOut: Int32Array;
}

export function edgePlaces(model: Model, edges: Edges, times: Float64Array): EdgePlaces {
  const places = (list: Float64Array): Int32Array => {
    const found = new Int32Array(list.length);
    for (let index = 0; index < list.length; index += 1) found[index] = sampleFrom(times, list[index] ?? 0);
    return found;
  };
  return {
    set: places(model.from),
    strip: places(model.to),
    assembly: places(edges.assemblyFrom),
    brokenDown: places(edges.brokenDownAt),
    built: places(edges.builtFrom),
    takenOut: places(edges.takenOutAt),
  };
}

/** Held less stock at every sample, one sample after another; written into `change`, which has a sample more. */
export function excessAtSamples(
  model: Model,
  edges: Edges,
  samples: Samples,
  places: EdgePlaces,
  followers: Int32Array,
  change: Float64Array,
): Float64Array {
  const { pieces, standing, components } = samples;
  const { set, strip, assembly, brokenDown, built, takenOut } = places;
  const count = components.length;
  change.fill(0);
  const add = (index: number, quantity: number, from: number, to: number): void => {
    const [first, last] = [from * count + index, to * count + index];
    change[first] = (change[first] ?? 0) + quantity;
    change[last] = (change[last] ?? 0) - quantity;
  };
  const followed = followedOf(followers);
  for (let turn = 0; turn < edges.turns; turn += 1) {
    const own = (model.design[turn] ?? 0) * count;
    const later = followers[turn] ?? -1;
    const edge = later < 0 ? -1 : edgeBetween(edges, turn, later);
    const right = (model.design[later] ?? 0) * count;
    for (let index = 0; index < count; index += 1) {
      const quantity = pieces[own + index] ?? 0;
      const after = edge < 0 ? 0 : (pieces[right + index] ?? 0);
      if (quantity === 0 && after === 0) continue;
      if (followed[turn] === 0) add(index, quantity, assembly[turn] ?? 0, set[turn] ?? 0);
      if (edge < 0) {
        add(index, quantity, strip[turn] ?? 0, brokenDown[turn] ?? 0);
        continue;
      }
      const common = Math.min(quantity, after);
      add(index, common, strip[turn] ?? 0, set[later] ?? 0);
      add(index, after - common, built[edge] ?? 0, set[later] ?? 0);
      add(index, quantity - common, strip[turn] ?? 0, takenOut[edge] ?? 0);
    }
  }
  for (let cell = count; cell < change.length; cell += 1)
    change[cell] = (change[cell] ?? 0) + (change[cell - count] ?? 0);
  const excess = change.subarray(0, standing.length);
  for (let cell = 0; cell < excess.length; cell += 1)
    excess[cell] = (excess[cell] ?? 0) + (standing[cell] ?? 0);
  return excess;
}

/** Labour, and the greatest excess seen on every day at the day's limit of price. */
export function costAtSamples(
  edges: Edges,
  samples: Samples,
  caps: Float64Array,
  followers: Int32Array,
  excess: Float64Array,
): number {
  let cost = 0;
  const followed = followedOf(followers);
  for (let turn = 0; turn < edges.turns; turn += 1) {
    if (followed[turn] === 0) cost += edges.assembleLabour[turn] ?? 0;
    const later = followers[turn] ?? -1;
    cost +=
      later < 0 ? (edges.breakDownLabour[turn] ?? 0) : (edges.labour[edgeBetween(edges, turn, later)] ?? 0);
  }
  const count = caps.length;
  const { day } = samples;
  const most = new Float64Array(count);
  for (let sample = 0; sample < day.length; sample += 1) {
    const newDay = sample > 0 && day[sample] !== day[sample - 1];
    for (let index = 0; index < count; index += 1) {
      if (newDay) {
        cost += (most[index] ?? 0) * (caps[index] ?? 0);
        most[index] = 0;
      }
      most[index] = Math.max(most[index] ?? 0, excess[sample * count + index] ?? 0);
    }
  }
  for (let index = 0; index < count; index += 1) cost += (most[index] ?? 0) * (caps[index] ?? 0);
  return cost;
}

function followedOf(followers: Int32Array): Uint8Array {
  const followed = new Uint8Array(followers.length);
  for (const later of followers) if (later >= 0) followed[later] = 1;
  return followed;
}
