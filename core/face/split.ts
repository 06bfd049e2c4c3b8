// Can these panels be split among rows of one length, none longer than it nor short of it by more than the
// greatest filler? Rows are filled one after another, each with one of the widest panels left, the fullest way
// first; what could not be split once is not tried again.
import { type Steps, widthOf } from './rows.ts';

export type Split = readonly (readonly number[])[] | 'impossible' | 'unknown';

export interface SplitLimits {
  readonly leastNm: number;
  readonly mostNm: number;
}

const patternsOfARow = 400;

/** `counts` by `widthsNm`, in any order of widths. Answers as many rows as asked, or why not. */
export function splitIntoRows(
  widthsNm: readonly number[],
  counts: readonly number[],
  rows: number,
  limits: SplitLimits,
  steps: Steps,
): Split {
  const codes = [...widthsNm.keys()].sort(
    (one, other) => (widthsNm[other] ?? 0) - (widthsNm[one] ?? 0) || one - other,
  );
  const widths = codes.map((code) => widthsNm[code] ?? 0);
  const search: Search = { widths, limits, steps, failed: new Set(), unsure: false };
  const found = fillRest(
    search,
    codes.map((code) => counts[code] ?? 0),
    rows,
  );
  if (found === undefined) return search.unsure ? 'unknown' : 'impossible';
  return found.map((row) => widthsNm.map((_, code) => row[codes.indexOf(code)] ?? 0));
}

interface Search {
  readonly widths: readonly number[];
  readonly limits: SplitLimits;
  readonly steps: Steps;
  readonly failed: Set<string>;
  unsure: boolean;
}

function fillRest(search: Search, rest: readonly number[], rows: number): number[][] | undefined {
  const { widths, limits, failed } = search;
  const totalNm = widthOf(widths, rest);
  if (totalNm > rows * limits.mostNm || totalNm < rows * limits.leastNm) return undefined;
  if (rows === 0) return [];
  const key = `${rows}:${rest.join(',')}`;
  if (failed.has(key)) return undefined;
  // the other rows can take no more and no less than this leaves them
  const leastNm = Math.max(limits.leastNm, totalNm - (rows - 1) * limits.mostNm);
  const mostNm = Math.min(limits.mostNm, totalNm - (rows - 1) * limits.leastNm);
  for (const row of patterns(search, rest, leastNm, mostNm)) {
    const others = fillRest(
      search,
      rest.map((count, code) => count - (row[code] ?? 0)),
      rows - 1,
    );
    if (others !== undefined) return [row, ...others];
    if (search.steps.left <= 0) {
      search.unsure = true;
      return undefined;
    }
  }
  if (!search.unsure) failed.add(key);
  return undefined;
}

/** Rows out of what is left, with one of the widest, the fullest first. */
function patterns(
  search: Search,
  rest: readonly number[],
  leastNm: number,
  mostNm: number,
): readonly number[][] {
  const { widths, steps } = search;
  const widest = rest.findIndex((count) => count > 0);
  const found: { row: number[]; roomNm: number }[] = [];
  // what all narrower panels left come to
  const behind = rest.map((_, code) => widthOf(widths.slice(code + 1), rest.slice(code + 1)));
  const row = rest.map(() => 0);
  const choose = (code: number, roomNm: number): void => {
    if (found.length >= patternsOfARow || steps.left <= 0) {
      search.unsure = true;
      return;
    }
    steps.left -= 1;
    if (code === rest.length) {
      if (mostNm - roomNm >= leastNm) found.push({ row: [...row], roomNm });
      return;
    }
    const width = widths[code] ?? 0;
    const most = Math.min(rest[code] ?? 0, Math.floor(roomNm / width));
    for (let count = most; count >= (code === widest ? 1 : 0); count -= 1) {
      const roomLeftNm = roomNm - count * width;
      if (mostNm - roomLeftNm + (behind[code] ?? 0) < leastNm) break;
      row[code] = count;
      choose(code + 1, roomLeftNm);
    }
    row[code] = 0;
  };
  if (widest < 0) return leastNm <= 0 ? [row] : [];
  choose(0, mostNm);
  return found.sort((one, other) => one.roomNm - other.roomNm).map((pattern) => pattern.row);
}
