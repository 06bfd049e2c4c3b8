// The limits of prices: none under 0, a component's prices of one day no more in sum than its hire of a day.
import type { Edges } from './edges.ts';
import type { Model } from './model.ts';
import type { Samples } from './samples.ts';

/** What a piece that cannot be hired counts a day where money stands for it: dearer than anything else. */
export function unmetPriceOf(model: Model, edges: Edges): number {
  let dearest = 0;
  for (const hire of edges.hire) dearest = Math.max(dearest, hire);
  let labour = 0;
  for (const turn of model.design.keys())
    labour += (edges.assembleLabour[turn] ?? 0) + (edges.breakDownLabour[turn] ?? 0);
  return Math.max(20 * dearest, labour / Math.max(1, edges.turns) / 5, 1 / 1024);
}

/** Prices to begin with: where turns alone are over stock, the day's hire at the day's worst instant. */
export function firstPrices(samples: Samples, caps: Float64Array): Float64Array {
  const { day, standing } = samples;
  const count = caps.length;
  const price = new Float64Array(day.length * count);
  for (let index = 0; index < count; index += 1) {
    let [worst, most] = [-1, 0];
    for (let sample = 0; sample <= day.length; sample += 1) {
      if (sample === day.length || day[sample] !== day[sample - 1]) {
        if (worst >= 0) price[worst * count + index] = caps[index] ?? 0;
        [worst, most] = [-1, 0];
      }
      const over = standing[sample * count + index] ?? 0;
      if (sample < day.length && over > most) [worst, most] = [sample, over];
    }
  }
  return price;
}

/** Brings the prices of every day back within their limits. */
export function limitDays(price: Float64Array, day: Int32Array, caps: Float64Array): void {
  const count = caps.length;
  for (let first = 0; first < day.length;) {
    let end = first + 1;
    while (end < day.length && day[end] === day[first]) end += 1;
    for (let index = 0; index < count; index += 1) {
      limitSum(price, first * count + index, end * count + index, count, caps[index] ?? 0);
    }
    first = end;
  }
}

/** The nearest point whose entries are not negative and add up to no more than the limit. */
function limitSum(values: Float64Array, from: number, to: number, stride: number, limit: number): void {
  let sum = 0;
  for (let cell = from; cell < to; cell += stride) sum += values[cell] ?? 0;
  for (let round = 0; sum > limit; round += 1) {
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
    if (sum > limit && (round > 40 || sum - limit < limit * 1e-9)) {
      const scale = (limit / sum) * (1 - 1e-12);
      for (let cell = from; cell < to; cell += stride) values[cell] = (values[cell] ?? 0) * scale;
      return;
    }
  }
}
