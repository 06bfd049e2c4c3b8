// The lengths nearest to a wanted one that panels side by side make without a filler.
import { reachOf } from './reach.ts';

export interface NearestLengths {
  /** The greatest not over the wanted length; 0 where every panel is wider. */
  readonly belowNm: number;
  /** The least over it; absent where there are no panels. */
  readonly aboveNm?: number;
}

/** @returns undefined where there are more than `most` remainders to look at */
export function nearestLengths(
  lengthNm: number,
  widthsNm: readonly number[],
  most: number,
): NearestLengths | undefined {
  const widths = widthsNm.toSorted((one, other) => one - other);
  const reach = reachOf(
    lengthNm,
    widths.filter((widthNm) => widthNm <= lengthNm),
    most,
  );
  if (reach === undefined) return undefined;
  // a length over the wanted one is a length not over it and one panel more
  let overNm = Infinity;
  let wider = widths.length;
  for (const leftNm of reach.left) {
    while (wider > 0 && (widths[wider - 1] ?? 0) > leftNm) wider -= 1;
    overNm = Math.min(overNm, (widths[wider] ?? Infinity) - leftNm);
  }
  return {
    belowNm: lengthNm - (reach.left.at(-1) ?? lengthNm),
    ...(overNm < Infinity && { aboveNm: lengthNm + overNm }),
  };
}
