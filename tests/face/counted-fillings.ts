// Every filling of a small face, by counting them all: every way to fill a row, every sum of such ways, in order.
import type { RowsRequest } from '../../core/face/rows.ts';

export interface Counted {
  readonly counts: readonly number[];
  readonly score: readonly [shortage: number, fillerNm: number, panelCount: number];
}

export function countedFillings(request: RowsRequest): readonly Counted[] {
  const { widthsNm, lengthNm, maximumFillerNm, stock } = request;
  const ways: number[][] = [];
  const fill = (counts: number[], leftNm: number): void => {
    const width = widthsNm[counts.length];
    if (width === undefined) {
      if (leftNm <= maximumFillerNm) ways.push(counts);
      return;
    }
    for (let count = 0; count * width <= leftNm; count += 1) fill([...counts, count], leftNm - count * width);
  };
  fill([], lengthNm);
  let sums = new Map([['', widthsNm.map(() => 0)]]);
  for (let row = 0; row < request.rows; row += 1) {
    const next = new Map<string, number[]>();
    for (const sum of sums.values()) {
      for (const way of ways) {
        const both = sum.map((count, code) => count + way[code]!);
        next.set(both.join(), both);
      }
    }
    sums = next;
  }
  const counted = [...sums.values()].map((counts): Counted => {
    let [shortage, fillerNm, panelCount] = [0, lengthNm * request.rows, 0];
    for (const [code, count] of counts.entries()) {
      if (stock !== undefined) shortage += Math.max(0, count - stock[code]!);
      fillerNm -= count * widthsNm[code]!;
      panelCount += count;
    }
    return { counts, score: [shortage, fillerNm, panelCount] };
  });
  return counted.sort((one, other) => {
    for (const [place, value] of one.score.entries())
      if (value !== other.score[place]) return value - other.score[place]!;
    const code = one.counts.findIndex((count, at) => count !== other.counts[at]);
    return code < 0 ? 0 : other.counts[code]! - one.counts[code]!;
  });
}
