// The least score with which each remainder can still be finished: panels beyond the stock, then filler, then
// panels. The three are one number, each so far above the next that it always outranks it.
import type { Reach } from './reach.ts';

export interface Limits {
  /** Panels of each code there are; absent: always enough. */
  readonly stock?: readonly number[];
  /** Panels of each code that have room, and of all codes together. */
  readonly most: readonly number[];
  readonly panels: number;
  readonly maximumFillerNm: number;
}

export interface Least {
  /** Of every code, then of the end: the least score from each remainder on; Infinity where there is no way. */
  readonly scores: readonly Float64Array[];
  /** The score of a number of panels of a code, without the filler. */
  readonly ofPanels: (code: number, count: number) => number;
  /** How many panels of a code have room. */
  readonly most: (code: number) => number;
  /** The score of so many panels, so many of them beyond the stock, whatever their codes. */
  readonly ofAny: (count: number, short: number) => number;
  /** Panels of a code and all after it that are in stock and have room. */
  readonly stockFrom: (code: number) => number;
}

export function leastScores(reach: Reach, limits: Limits): Least {
  const { steps, left } = reach;
  const possible = left.filter((remainder) => remainder <= limits.maximumFillerNm).length;
  const panels = limits.panels + 1;
  const beyond = possible * panels;
  if (!Number.isSafeInteger(beyond * panels)) throw new Error('The scores of a face do not fit a number.');
  const inStock = (code: number): number =>
    Math.min(limits.stock?.[code] ?? Infinity, limits.most[code] ?? 0);
  // the least remainder stands last
  let scores = left.map((remainder, place) =>
    remainder <= limits.maximumFillerNm ? (left.length - 1 - place) * panels : Infinity,
  );
  const all = [scores];
  for (let code = steps.length - 1; code >= 0; code -= 1) {
    const step = steps[code];
    if (step === undefined) break;
    const [cheap, most] = [inStock(code), limits.most[code] ?? 0];
    const used = scores.slice();
    useUpTo(used, step.less, cheap, 1);
    useUpTo(used, step.less, most - cheap, 1 + beyond);
    scores = Float64Array.from(step.same, (place) => (place < 0 ? Infinity : (used[place] ?? Infinity)));
    all.push(scores);
  }
  return {
    scores: all.reverse(),
    ofPanels: (code, count) => count + beyond * Math.max(0, count - inStock(code)),
    most: (code) => limits.most[code] ?? 0,
    ofAny: (count, short) => count + beyond * short,
    stockFrom: (code) => limits.most.reduce((sum, _, at) => (at < code ? sum : sum + inStock(at)), 0),
  };
}

/** Up to so many panels at one price each: chunks of 1, 2, 4 ... and the rest make up every number of them. */
function useUpTo(scores: Float64Array, less: Int32Array, copies: number, price: number): void {
  let rest = copies;
  let link = less;
  for (let chunk = 1; rest > 0; chunk *= 2) {
    const taken = Math.min(chunk, rest);
    const links = taken === chunk ? link : linkOf(less, taken);
    let found = false;
    // a remainder's shorter ones stand after it and are not yet changed
    for (let place = 0; place < scores.length; place += 1) {
      const shorter = links[place] ?? -1;
      if (shorter < 0) continue;
      found = true;
      const score = (scores[shorter] ?? Infinity) + taken * price;
      if (score < (scores[place] ?? Infinity)) scores[place] = score;
    }
    if (!found && taken === chunk) return;
    rest -= taken;
    link = twice(link, link);
  }
}

function linkOf(less: Int32Array, times: number): Int32Array {
  let link: Int32Array | undefined;
  let power = less;
  for (let rest = times; rest > 0; rest = Math.floor(rest / 2)) {
    if (rest % 2 === 1) link = link === undefined ? power : twice(link, power);
    power = twice(power, power);
  }
  return link ?? less;
}

function twice(first: Int32Array, second: Int32Array): Int32Array {
  return first.map((place) => (place < 0 ? -1 : (second[place] ?? -1)));
}

/** Of every code, then of the end: the fewest panels from each remainder on; Infinity where there is no way. */
export function fewestPanels(reach: Reach, limits: Limits): readonly Float64Array[] {
  // where nothing is in stock every panel is beyond it, and that is made least first
  const { scores, ofAny } = leastScores(reach, { ...limits, stock: limits.most.map(() => 0) });
  const ofOne = ofAny(0, 1);
  return scores.map((level) => level.map((score) => Math.floor(score / ofOne)));
}
