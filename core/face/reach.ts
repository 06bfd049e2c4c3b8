// Which remainders of a length can be left when panels are taken code by code, in catalogue order. Only how many
// of each code a row holds matters for filling it, so all fillings of a row are paths through these remainders.
// They are kept as they are met, in whole nanometres: inches and millimetres mix without a common grid.

/** What one code can do to a remainder. */
export interface ReachStep {
  /** Of every remainder before: where the same remainder stands after. */
  readonly same: Int32Array;
  /** Of every remainder after: where it stands with one panel of the code more, or -1. */
  readonly less: Int32Array;
}

export interface Reach {
  readonly steps: readonly ReachStep[];
  /** What can be left in the end, greatest first. */
  readonly left: Float64Array;
}

/** @returns undefined where there are more than `most` remainders, those after every code added up */
export function reachOf(lengthNm: number, widthsNm: readonly number[], most: number): Reach | undefined {
  const steps: ReachStep[] = [];
  let left = Float64Array.of(lengthNm);
  let room = most;
  for (const widthNm of widthsNm) {
    const taken = takeWidth(left, widthNm, room);
    if (taken === undefined) return undefined;
    steps.push(taken.step);
    left = taken.after;
    room -= left.length;
  }
  return { steps, left };
}

/** All that comes of taking the width off again and again, greatest first. */
function takeWidth(
  before: Float64Array,
  widthNm: number,
  most: number,
): { step: ReachStep; after: Float64Array<ArrayBuffer> } | undefined {
  const after: number[] = [];
  const less: number[] = [];
  const same = new Int32Array(before.length);
  let [from, again] = [0, 0];
  for (;;) {
    const fresh = before[from] ?? -1;
    const shorter = (after[again] ?? -1) - widthNm;
    const next = Math.max(fresh, shorter);
    if (next < 0) break;
    if (after.length === most) return undefined;
    if (fresh === next) {
      same[from] = after.length;
      from += 1;
    }
    if (shorter === next) {
      less[again] = after.length;
      again += 1;
    }
    less.push(-1);
    after.push(next);
  }
  return { step: { same, less: Int32Array.from(less) }, after: Float64Array.from(after) };
}
