// The instants at which the bound looks at held against stock: held only rises when something begins, so
// beginnings, midnights and changes of stock are enough. Fewer instants would still give a valid bound.
import type { Edges } from './edges.ts';
import { dayStarts, levelAt, type Model } from './model.ts';

export interface Samples {
  readonly times: Float64Array;
  /** The day of hire of every sample, counted from 0; samples of a day stand together. */
  readonly day: Int32Array;
  readonly days: number;
  /** Components that can cost anything, by their place in the model. */
  readonly components: Int32Array;
  /** Quantities of those components, one design after another. */
  readonly pieces: Int32Array;
  /** What turns and loose turns hold while they stand, less stock: one sample after another. */
  readonly standing: Float64Array;
}

export function samplesOf(model: Model, edges: Edges): Samples {
  const components = dearComponents(model, edges);
  const pieces = dearPieces(model, components);
  const { times, starts } = sampleTimes(model, edges, components);
  const day = new Int32Array(times.length);
  let today = 0;
  for (const [index, time] of times.entries()) {
    while ((starts[today + 1] ?? Infinity) <= time) today += 1;
    day[index] = today;
  }
  const standing = standingAt(model, components, pieces, times);
  return { times, day, days: starts.length, components, pieces, standing };
}

/** The first sample at or after the instant. */
export function sampleFrom(times: Float64Array, at: number): number {
  let [low, high] = [0, times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((times[middle] ?? Infinity) < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Quantities of those components alone, one design after another. */
export function dearPieces(model: Model, components: Int32Array): Int32Array {
  const count = components.length;
  const pieces = new Int32Array(model.designCodes.length * count);
  for (let design = 0; design < model.designCodes.length; design += 1) {
    for (let index = 0; index < count; index += 1) {
      pieces[design * count + index] =
        model.pieces[design * model.codes.length + (components[index] ?? 0)] ?? 0;
    }
  }
  return pieces;
}

/** Components that somebody uses and that cost hire or cannot be hired. */
export function dearComponents(model: Model, edges: Edges): Int32Array {
  const used = new Uint8Array(model.codes.length);
  for (const design of model.design) {
    for (let component = 0; component < model.codes.length; component += 1) {
      if ((model.pieces[design * model.codes.length + component] ?? 0) > 0) used[component] = 1;
    }
  }
  for (const { pieces } of model.loose)
    for (const [component, quantity] of pieces) if (quantity > 0) used[component] = 1;
  return Int32Array.from(used.keys()).filter(
    (component) =>
      used[component] === 1 && ((edges.hire[component] ?? 0) > 0 || edges.cannotHire[component] === 1),
  );
}

function sampleTimes(
  model: Model,
  edges: Edges,
  components: Int32Array,
): { times: Float64Array; starts: number[] } {
  let [first, last] = [Infinity, -Infinity];
  const begins: number[] = [];
  for (const at of edges.assemblyFrom) begins.push(at);
  for (const at of model.from) begins.push(at);
  for (const { from, to } of model.loose) {
    begins.push(from);
    last = Math.max(last, to);
  }
  for (const at of edges.brokenDownAt) last = Math.max(last, at);
  for (const at of begins) first = Math.min(first, at);
  if (begins.length === 0) return { times: new Float64Array(0), starts: [] };
  const starts = dayStarts(model, first, last);
  for (const at of starts) begins.push(at);
  for (const component of components) {
    for (const at of model.stock[component]?.times ?? []) if (at > first && at < last) begins.push(at);
  }
  const times = Float64Array.from(new Set(begins)).sort();
  return { times: times.filter((at) => at >= first && at <= last), starts };
}

function standingAt(
  model: Model,
  components: Int32Array,
  pieces: Int32Array,
  times: Float64Array,
): Float64Array {
  const count = components.length;
  const standing = new Float64Array((times.length + 1) * count);
  const add = (index: number, quantity: number, from: number, to: number): void => {
    const [begin, end] = [from * count + index, to * count + index];
    standing[begin] = (standing[begin] ?? 0) + quantity;
    standing[end] = (standing[end] ?? 0) - quantity;
  };
  for (let turn = 0; turn < model.from.length; turn += 1) {
    const begin = sampleFrom(times, model.from[turn] ?? 0);
    const end = sampleFrom(times, model.to[turn] ?? 0);
    const own = (model.design[turn] ?? 0) * count;
    for (let index = 0; index < count; index += 1) {
      const quantity = pieces[own + index] ?? 0;
      if (quantity > 0) add(index, quantity, begin, end);
    }
  }
  const place = new Map(Array.from(components, (component, index) => [component, index]));
  for (const { from, to, pieces: own } of model.loose) {
    for (const [component, quantity] of own) {
      const index = place.get(component);
      if (index !== undefined && quantity > 0)
        add(index, quantity, sampleFrom(times, from), sampleFrom(times, to));
    }
  }
  for (let at = count; at < standing.length; at += 1)
    standing[at] = (standing[at] ?? 0) + (standing[at - count] ?? 0);
  for (const [index, component] of components.entries()) {
    const stock = model.stock[component];
    if (stock === undefined) continue;
    const steady = stock.times.length === 1 && stock.times[0] === -Infinity ? stock.levels[0] : undefined;
    for (let sample = 0; sample < times.length; sample += 1) {
      const cell = sample * count + index;
      standing[cell] = (standing[cell] ?? 0) - (steady ?? levelAt(stock, times[sample] ?? 0));
    }
  }
  return standing.slice(0, times.length * count);
}
