// Fills rows of one height from one stock: the best fillings, in order. One row is exact by its remainders. More
// rows share the stock: first the fillings of their sum, in order, each split among the rows; where that leaves
// something open, the rows jointly; and where the effort ends before the proof, the best that was found.
import { fillingsInOrder, moreOfTheEarlier } from './in-order.ts';
import { fillJointly, type Tables } from './joint.ts';
import { leastScores } from './least.ts';
import { reachOf } from './reach.ts';
import { type Effort, type Filling, fillingOf, type Fillings, fullEffort, type RowsRequest } from './rows.ts';
import { splitIntoRows } from './split.ts';

/**
 * Panels upright side by side, a filler from nothing to `maximumFillerNm` in every row. In order: fewest panels
 * beyond the stock, least filler, fewest panels, then more of the earlier panel. All lengths are whole
 * nanometres; `fillable` says which are taken.
 */
export function fillRows(request: RowsRequest, effort: Effort = fullEffort): Fillings {
  // what is wider than the row has no place in it
  const codes = [...request.widthsNm.keys()].filter(
    (code) => (request.widthsNm[code] ?? 0) <= request.lengthNm,
  );
  const { stock } = request;
  const fitting: RowsRequest = {
    ...request,
    widthsNm: codes.map((code) => request.widthsNm[code] ?? 0),
    ...(stock && { stock: codes.map((code) => stock[code] ?? 0) }),
  };
  const { fillings, proven } = request.rows === 1 ? fillOne(fitting, effort) : fillMany(fitting, effort);
  const widened = (counts: readonly number[]): readonly number[] =>
    request.widthsNm.map((_, code) => counts[codes.indexOf(code)] ?? 0);
  return {
    fillings: fillings.map(({ rows }) => fillingOf(request, rows.map(widened))),
    proven,
  };
}

/** Numbers of panels and sums of lengths beyond this are refused before they are filled. */
export const mostPanels = 20_000;

/** Are these lengths within what is added up exactly and in reasonable time? */
export function fillable({ lengthNm, rows, widthsNm }: RowsRequest): boolean {
  const narrowest = widthsNm.reduce((least, widthNm) => Math.min(least, widthNm), Infinity);
  return Number.isSafeInteger(lengthNm * rows) && (lengthNm / narrowest) * rows <= mostPanels;
}

function fillOne(request: RowsRequest, effort: Effort): Fillings {
  const { reach, least } = tablesOf(request, request.lengthNm, 1, request.maximumFillerNm, effort);
  const fillings: Filling[] = [];
  for (const { counts } of fillingsInOrder(reach, least)) {
    fillings.push(fillingOf(request, [counts]));
    if (fillings.length === request.best) break;
  }
  return { fillings, proven: reach.whole };
}

function fillMany(request: RowsRequest, effort: Effort): Fillings {
  const { lengthNm, rows, maximumFillerNm, best } = request;
  const { stock: _, ...unlimited } = request;
  const one = tablesOf(unlimited, lengthNm, 1, maximumFillerNm, effort);
  const left = one.reach.left.filter((remainder) => remainder <= maximumFillerNm);
  // what no row can do, their sum is not asked for
  const [leastNm, greatestNm] = one.reach.whole ? [left.at(-1) ?? 0, left[0] ?? 0] : [0, maximumFillerNm];
  if (one.reach.whole && left.length === 0) return { fillings: [], proven: true };
  const all = tablesOf(request, (lengthNm - leastNm) * rows, rows, (greatestNm - leastNm) * rows, effort);
  const whole = one.reach.whole && all.reach.whole;
  const bySum = splitInOrder(request, all, effort);
  if (bySum.proven && whole) return bySum;
  const joint = fillJointly(one, all, rows, best, effort.shares);
  const jointly = joint.found.map((counts) => fillingOf(request, counts));
  if (joint.finished && whole) return { fillings: jointly.map(settled), proven: true };
  const found = [...bySum.fillings, ...jointly, ...oneAfterAnother(request, effort)];
  return { fillings: bestOf(found.map(settled), best), proven: false };
}

/** The tables of `rows` rows' sum, of `sumNm`. */
function tablesOf(
  request: RowsRequest,
  sumNm: number,
  rows: number,
  maximumFillerNm: number,
  effort: Effort,
): Tables {
  const { widthsNm, lengthNm, stock } = request;
  const reach = reachOf(sumNm, widthsNm, effort.remainders);
  const most = widthsNm.map((widthNm) => rows * Math.floor(lengthNm / widthNm));
  const narrowest = widthsNm.reduce((least, widthNm) => Math.min(least, widthNm), Infinity);
  const panels = Math.floor(sumNm / narrowest);
  return { reach, least: leastScores(reach, { most, panels, maximumFillerNm, ...(stock && { stock }) }) };
}

const candidates = 300;

/** Fillings of the sum that can be split among the rows; proven while every one before was split or cannot be. */
function splitInOrder(request: RowsRequest, all: Tables, effort: Effort): Fillings {
  const { widthsNm, lengthNm, rows, maximumFillerNm, best } = request;
  const limits = { leastNm: Math.max(0, lengthNm - maximumFillerNm), mostNm: lengthNm };
  const steps = { left: effort.shares };
  const fillings: Filling[] = [];
  let proven = true;
  let tried = 0;
  for (const { counts } of fillingsInOrder(all.reach, all.least)) {
    const own = { left: Math.min(steps.left, 50_000) };
    const before = own.left;
    const split = splitIntoRows(widthsNm, counts, rows, limits, own);
    steps.left -= before - own.left;
    if (split === 'unknown') proven = false;
    else if (split !== 'impossible') fillings.push(settled(fillingOf(request, split)));
    if (fillings.length === best) return { fillings, proven };
    tried += 1;
    if (tried >= candidates + best || steps.left <= 0) return { fillings, proven: false };
  }
  return { fillings, proven };
}

/** Every row by itself, from what the rows before it left in stock. */
function oneAfterAnother(request: RowsRequest, effort: Effort): readonly Filling[] {
  let { stock } = request;
  const rows: (readonly number[])[] = [];
  for (let row = 0; row < request.rows; row += 1) {
    const [first] = fillOne({ ...request, ...(stock && { stock }), rows: 1, best: 1 }, effort).fillings;
    if (first === undefined) return [];
    rows.push(first.counts);
    stock = stock?.map((count, code) => Math.max(0, count - (first.counts[code] ?? 0)));
  }
  return [fillingOf(request, rows)];
}

/** Rows of one height may stand in any order: the one with more of the earlier panel is the lowest. */
function settled(filling: Filling): Filling {
  return {
    ...filling,
    rows: [...filling.rows].sort((one, other) => (moreOfTheEarlier(one, other) ? -1 : 1)),
  };
}

function bestOf(found: readonly Filling[], best: number): readonly Filling[] {
  const distinct = new Map(found.map((filling) => [filling.counts.join(','), filling]));
  return [...distinct.values()].sort(compareFillings).slice(0, best);
}

/** Fewest beyond the stock, least filler, fewest panels, then more of the earlier panel. */
export function compareFillings(one: Omit<Filling, 'rows'>, other: Omit<Filling, 'rows'>): number {
  return (
    one.shortage - other.shortage ||
    one.fillerNm - other.fillerNm ||
    one.panelCount - other.panelCount ||
    compareCounts(one.counts, other.counts)
  );
}

function compareCounts(one: readonly number[], other: readonly number[]): number {
  if (moreOfTheEarlier(one, other)) return -1;
  return moreOfTheEarlier(other, one) ? 1 : 0;
}
