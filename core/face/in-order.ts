// The fillings of a length, the best first. From every remainder the least score to the end is known, so the
// queue only ever follows what leads to the next filling.
import type { Least } from './least.ts';
import { queueBy } from './queue.ts';
import type { Reach } from './reach.ts';

/** Panels of every code so far, in catalogue order, and the least score that can come of it. */
export interface Begun {
  readonly counts: readonly number[];
  readonly score: number;
}

/** Of equal scores the one with more of the earlier code comes first. */
export function comesBefore(one: Begun, other: Begun): boolean {
  if (one.score !== other.score) return one.score < other.score;
  return compareCounts(one.counts, other.counts) < 0;
}

/** More of the earlier code first; of two on the same way the shorter, which may become either. */
export function compareCounts(one: readonly number[], other: readonly number[]): number {
  const codes = Math.min(one.length, other.length);
  for (let code = 0; code < codes; code += 1) {
    const more = (other[code] ?? 0) - (one[code] ?? 0);
    if (more !== 0) return more;
  }
  return one.length - other.length;
}

export interface Choice {
  /** How many panels of the code. */
  readonly count: number;
  /** Where the remainder stands after the code. */
  readonly place: number;
  readonly score: number;
}

/** What can be done with the next code from a remainder, the best first; `spent` is the score of the panels so far. */
export function choicesAt(
  reach: Reach,
  least: Least,
  code: number,
  place: number,
  spent: number,
): readonly Choice[] {
  const step = reach.steps[code];
  const after = least.scores[code + 1];
  const choices: Choice[] = [];
  if (step === undefined || after === undefined) return choices;
  for (
    let count = 0, at = step.same[place] ?? -1;
    at >= 0 && count <= least.most(code);
    count += 1, at = step.less[at] ?? -1
  ) {
    const score = spent + least.ofPanels(code, count) + (after[at] ?? Infinity);
    if (score < Infinity) choices.push({ count, place: at, score });
  }
  return choices.sort((one, other) => one.score - other.score || other.count - one.count);
}

interface Path extends Begun {
  readonly place: number;
  /** Score of the panels of `counts`, and of those before the last code. */
  readonly spent: number;
  readonly before: number;
  /** The choices this one is of, and the place of the next best among them. */
  readonly choices: readonly Choice[];
  readonly next: number;
}

/** How many panels of each code, in catalogue order. */
export function* fillingsInOrder(reach: Reach, least: Least): Generator<Begun> {
  const codes = reach.steps.length;
  const score = least.scores[0]?.[0] ?? Infinity;
  if (score === Infinity) return;
  const queue = queueBy<Path>(comesBefore);
  if (codes === 0) {
    yield { counts: [], score };
    return;
  }
  const put = (
    counts: readonly number[],
    before: number,
    choices: readonly Choice[],
    which: number,
  ): void => {
    const choice = choices[which];
    if (choice === undefined) return;
    queue.put({
      counts: [...counts, choice.count],
      score: choice.score,
      place: choice.place,
      spent: before + least.ofPanels(counts.length, choice.count),
      before,
      choices,
      next: which + 1,
    });
  };
  put([], 0, choicesAt(reach, least, 0, 0, 0), 0);
  for (let path = queue.take(); path !== undefined; path = queue.take()) {
    const { counts, place, spent, before, choices, next } = path;
    put(counts.slice(0, -1), before, choices, next);
    if (counts.length === codes) yield { counts, score: path.score };
    else put(counts, spent, choicesAt(reach, least, counts.length, place, spent), 0);
  }
}
