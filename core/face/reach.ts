// Which remainders of a length can be left when panels are taken code by code, in catalogue order. Only how many
// of each code a row holds matters for filling it, so all fillings of a row are paths through these remainders.
// They are kept as they are met, in whole nanometres: inches and millimetres mix without a common grid.

/** What one code can do to a remainder. */
export interface ReachStep {
  /** Of every remainder before: where the same remainder stands after, or -1 where it was dropped. */
  readonly same: Int32Array;
  /** Of every remainder after: where it stands with one panel of the code more, or -1. */
  readonly less: Int32Array;
}

export interface Reach {
  readonly steps: readonly ReachStep[];
  /** What can be left in the end, greatest first. */
  readonly left: Float64Array;
  /** False where remainders were dropped to keep to the effort: then some fillings are not among the paths. */
  readonly whole: boolean;
}

/** @param effort remainders kept at most, over all codes, in round numbers */
export function reachOf(lengthNm: number, widthsNm: readonly number[], effort: number): Reach {
  const most = Math.max(1000, Math.floor(effort / Math.max(1, widthsNm.length)));
  const steps: ReachStep[] = [];
  let left = Float64Array.of(lengthNm);
  let whole = true;
  for (const widthNm of widthsNm) {
    let taken = takeWidth(left, widthNm, 1, most);
    if (taken === undefined) {
      whole = false;
      const chain = Math.floor((left[0] ?? 0) / widthNm) + 1;
      // so many dropped that the rest and all its chains have room, even where none of them meet
      const every = Math.ceil((left.length * chain) / most);
      taken = takeWidth(left, widthNm, Math.min(every, left.length), most, true);
    }
    if (taken === undefined) throw new Error('Remainders were dropped and still have no room.');
    steps.push(taken.step);
    left = taken.after;
  }
  return { steps, left, whole };
}

/** Of every `every`th remainder, all that comes of taking the width off it again and again, greatest first. */
function takeWidth(
  before: Float64Array,
  widthNm: number,
  every: number,
  most: number,
  cut = false,
): { step: ReachStep; after: Float64Array<ArrayBuffer> } | undefined {
  const after: number[] = [];
  const less: number[] = [];
  const same = new Int32Array(before.length).fill(-1);
  let [from, again] = [0, 0];
  for (;;) {
    const fresh = before[from] ?? -1;
    const shorter = (after[again] ?? -1) - widthNm;
    const next = Math.max(fresh, shorter);
    if (next < 0) break;
    if (after.length === most) {
      if (!cut) return undefined;
      break;
    }
    if (fresh === next) {
      same[from] = after.length;
      from += every;
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
