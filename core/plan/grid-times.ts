// The instants of a grid and where each turn and edge stands on it, with what turns and loose turns hold while
// they stand.
import type { Edges } from './edges.ts';
import { dayStarts, levelAt, type Model } from './model.ts';
import { sampleFrom } from './samples.ts';

export interface GridPlaces {
  readonly set: Int32Array;
  readonly strip: Int32Array;
  readonly assembly: Int32Array;
  readonly brokenDown: Int32Array;
  readonly built: Int32Array;
  readonly takenOut: Int32Array;
}

export function gridPlaces(
  model: Model,
  edges: Edges,
  candidates: Int32Array,
  times: Float64Array,
): GridPlaces {
  const place = new Map(Array.from(times, (time, index) => [time, index]));
  const places = (list: Float64Array): Int32Array => Int32Array.from(list, (at) => place.get(at) ?? 0);
  const built = new Int32Array(edges.to.length);
  const takenOut = new Int32Array(edges.to.length);
  for (const edge of candidates) {
    built[edge] = place.get(edges.builtFrom[edge] ?? 0) ?? 0;
    takenOut[edge] = place.get(edges.takenOutAt[edge] ?? 0) ?? 0;
  }
  return {
    set: places(model.from),
    strip: places(model.to),
    assembly: places(edges.assemblyFrom),
    brokenDown: places(edges.brokenDownAt),
    built,
    takenOut,
  };
}

export function gridTimes(
  model: Model,
  edges: Edges,
  candidates: Int32Array,
  components: Int32Array,
): { times: Float64Array; starts: number[] } {
  const all = new Set<number>();
  for (const list of [model.from, model.to, edges.assemblyFrom, edges.brokenDownAt])
    for (const at of list) all.add(at);
  for (const { from, to } of model.loose) all.add(from).add(to);
  for (const edge of candidates) all.add(edges.builtFrom[edge] ?? 0).add(edges.takenOutAt[edge] ?? 0);
  let [first, last] = [Infinity, -Infinity];
  for (const at of all) {
    first = Math.min(first, at);
    last = Math.max(last, at);
  }
  if (all.size === 0) return { times: new Float64Array(0), starts: [] };
  const starts = dayStarts(model, first, last);
  for (const at of starts) all.add(at);
  for (const component of components) {
    for (const at of model.stock[component]?.times ?? []) if (at > first && at < last) all.add(at);
  }
  return { times: Float64Array.from(all).sort(), starts };
}

/** Held less stock while turns and loose turns stand: every component over all instants, one after another. */
export function standingOnGrid(
  model: Model,
  components: Int32Array,
  pieces: Int32Array,
  times: Float64Array,
  places: GridPlaces,
): Int32Array {
  const count = components.length;
  const excess = new Int32Array(count * times.length);
  const lay = (index: number, quantity: number, from: number, to: number): void => {
    const row = index * times.length;
    for (let cell = row + from; cell < row + to; cell += 1) excess[cell] = (excess[cell] ?? 0) + quantity;
  };
  for (const [index, component] of components.entries()) {
    const stock = model.stock[component];
    if (stock === undefined) continue;
    const only = stock.times.length === 1 && stock.times[0] === -Infinity;
    for (let cell = 0; cell < times.length; cell += 1) {
      excess[index * times.length + cell] = -(only
        ? (stock.levels[0] ?? 0)
        : levelAt(stock, times[cell] ?? 0));
    }
  }
  for (const [turn, from] of places.set.entries()) {
    for (let index = 0; index < count; index += 1) {
      const quantity = pieces[(model.design[turn] ?? 0) * count + index] ?? 0;
      if (quantity > 0) lay(index, quantity, from, places.strip[turn] ?? from);
    }
  }
  const place = new Map(Array.from(components, (component, index) => [component, index]));
  for (const { from, to, pieces: own } of model.loose) {
    for (const [component, quantity] of own) {
      const index = place.get(component);
      if (index !== undefined) lay(index, quantity, sampleFrom(times, from), sampleFrom(times, to));
    }
  }
  return excess;
}
