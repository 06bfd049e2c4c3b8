// Lengths without a common measure can leave more remainders than can be looked at. Then widths are rounded to a
// grid and filled on it; what still fits in true lengths is kept. Good fillings, without a proof.
import { type Effort, type Filling, fillingOf, type Fillings, type RowsRequest, widthOf } from './rows.ts';

/** More than are wanted: on the grid their order is only nearly right, and some will not fit. */
const further = 200;
const tries = 4;

export function onGrid(
  request: RowsRequest,
  effort: Effort,
  fill: (asked: RowsRequest, effort: Effort) => Fillings | undefined,
): readonly Filling[] {
  const { lengthNm, rows, widthsNm, maximumFillerNm, best } = request;
  const gridNm = Math.ceil((2 * lengthNm * rows * Math.max(1, widthsNm.length)) / effort.remainders);
  const widths = widthsNm.map((widthNm) => Math.max(1, Math.round(widthNm / gridNm)));
  const widest = widthsNm.reduce((greatest, widthNm) => Math.max(greatest, widthNm), 1);
  // roundings go both ways: of n panels, about their square root does not cancel out
  const roomNm = Math.min(maximumFillerNm / 2, gridNm * Math.sqrt(lengthNm / widest));
  const fits = (row: readonly number[]): boolean => {
    const leftNm = lengthNm - widthOf(widthsNm, row);
    return leftNm >= 0 && leftNm <= maximumFillerNm;
  };
  let roundedNm = 0;
  for (let time = 0; time < tries; time += 1) {
    const asked = {
      ...request,
      lengthNm: Math.floor((lengthNm - roomNm - roundedNm) / gridNm),
      widthsNm: widths,
      maximumFillerNm: Math.floor((maximumFillerNm - 2 * roomNm) / gridNm),
      best: best + further,
    };
    // nothing is to be proven there
    const fillings = fill(asked, { ...effort, shares: 0 })?.fillings ?? [];
    const fitting = fillings.filter((filling) => filling.rows.every(fits));
    if (fitting.length > 0) return fitting.map((filling) => fillingOf(request, filling.rows));
    const [first] = fillings;
    if (first === undefined) return [];
    // the best have most panels in common, and so what their roundings come to
    roundedNm = (widthOf(widthsNm, first.counts) - widthOf(widths, first.counts) * gridNm) / rows;
  }
  return [];
}
