// Random faces by a seed, small enough that every filling can be counted or a general solver ends.
import type { RowsRequest } from '../../core/face/rows.ts';

export const inchNm = 25_400_000;

/** Numbers from 0 to below n, the same for a seed on every machine. */
export function numbersFrom(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    // a linear congruence; its high bits are used
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

export interface FaceSize {
  readonly rows: number;
  readonly codes: number;
  /** In units of the grid. */
  readonly lengths: readonly [least: number, most: number];
  readonly widths: readonly [least: number, most: number];
}

const grids = [inchNm, inchNm / 2, 50_000_000, 1_000_003];

/** Widths and stock as they come, some codes twice as wide, some not in stock; one in four without a stock. */
export function randomFace(number: (below: number) => number, size: FaceSize): RowsRequest {
  const between = ([least, most]: readonly [number, number]): number => least + number(most - least + 1);
  const gridNm = grids[number(grids.length)] ?? inchNm;
  const codes = 1 + number(size.codes);
  const widthsNm = Array.from({ length: codes }, () => between(size.widths) * gridNm);
  const lengthNm = between(size.lengths) * gridNm;
  const some = Math.ceil(((size.rows * lengthNm) / (widthsNm[0] ?? lengthNm) / codes) * 2) + 1;
  const stock = widthsNm.map(() => (number(4) === 0 ? 0 : number(some)));
  return {
    lengthNm,
    rows: size.rows,
    widthsNm,
    maximumFillerNm: number(4) === 0 ? 0 : number(6) * gridNm + number(2) * number(gridNm),
    best: 1 + number(5),
    ...(number(4) > 0 && { stock }),
  };
}
