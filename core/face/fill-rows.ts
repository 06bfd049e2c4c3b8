// Fills rows of one height from one stock: the best fillings, in order. One row is exact by its remainders. More
// rows share the stock: first the fillings of their sum, in order, each split among the rows; where that leaves
// something open, the rows jointly; and where the effort ends before the proof, the best that was found.
import { compareCounts, fillingsInOrder } from './in-order.ts';
import { fillJointly } from './joint.ts';
import { fewestPanels, leastScores } from './least.ts';
import { onGrid } from './on-grid.ts';
import { reachOf } from './reach.ts';
import { type Effort, type Filling, fillingOf, type Fillings, fullEffort, type RowsRequest } from './rows.ts';
import type { Tables } from './share-out.ts';
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
  const { fillings, proven } = fillFitting(fitting, effort);
  const widened = (counts: readonly number[]): readonly number[] => {
    const all = request.widthsNm.map(() => 0);
    for (const [index, code] of codes.entries()) all[code] = counts[index] ?? 0;
    return all;
  };
  return { fillings: fillings.map(({ rows }) => fillingOf(request, rows.map(widened))), proven };
}

/** More panels than this, all rows together, are not filled with. */
const mostPanels = 20_000;

/** Are these lengths within what is added up exactly and in reasonable time? */
export function fillable({ lengthNm, rows, widthsNm }: RowsRequest): boolean {
  const narrowest = widthsNm.reduce((least, widthNm) => Math.min(least, widthNm), Infinity);
  return Number.isSafeInteger(lengthNm * rows) && (lengthNm / narrowest) * rows <= mostPanels;
}

function fillFitting(request: RowsRequest, effort: Effort): Fillings {
  const exact = exactly(request, effort);
  if (exact?.proven === true) return exact;
  const found = exact?.fillings ?? onGrid(request, effort, exactly);
  const any = found.length > 0 || request.rows === 1 ? found : oneAfterAnother(request, effort);
  return { fillings: bestOf(any, request.best), proven: false };
}

/** Undefined where there are more remainders than the effort allows. */
function exactly(request: RowsRequest, effort: Effort): Fillings | undefined {
  return request.rows === 1 ? fillOne(request, effort) : fillMany(request, effort);
}

function fillOne(request: RowsRequest, effort: Effort): Fillings | undefined {
  const tables = tablesOf(request, request.lengthNm, 1, request.maximumFillerNm, effort);
  if (tables === undefined) return undefined;
  const fillings: Filling[] = [];
  for (const { counts } of fillingsInOrder(tables.reach, tables.least)) {
    fillings.push(fillingOf(request, [counts]));
    if (fillings.length === request.best) break;
  }
  return { fillings, proven: true };
}

function fillMany(request: RowsRequest, effort: Effort): Fillings | undefined {
  const { lengthNm, rows, maximumFillerNm, best } = request;
  const { stock: _, ...unlimited } = request;
  const one = tablesOf(unlimited, lengthNm, 1, maximumFillerNm, effort);
  if (one === undefined) return undefined;
  const left = one.reach.left.filter((remainder) => remainder <= maximumFillerNm);
  const [greatestNm, leastNm] = [left[0], left.at(-1)];
  if (greatestNm === undefined || leastNm === undefined) return { fillings: [], proven: true };
  // what no row can do is not asked of their sum
  const all = tablesOf(request, (lengthNm - leastNm) * rows, rows, (greatestNm - leastNm) * rows, effort);
  if (all === undefined) return undefined;
  const bySum = splitInOrder(request, all, effort);
  if (bySum.proven) return bySum;
  const joint = fillJointly(one, all, rows, best, { left: effort.shares });
  const jointly = joint.found.map((counts) => settled(fillingOf(request, counts)));
  if (joint.finished) return { fillings: jointly, proven: true };
  return { fillings: [...bySum.fillings, ...jointly], proven: false };
}

/** The tables of `rows` rows' sum, of `sumNm`. */
function tablesOf(
  request: RowsRequest,
  sumNm: number,
  rows: number,
  maximumFillerNm: number,
  effort: Effort,
): Tables | undefined {
  const { widthsNm, lengthNm, stock } = request;
  const reach = reachOf(sumNm, widthsNm, effort.remainders);
  if (reach === undefined) return undefined;
  const most = widthsNm.map((widthNm) => rows * Math.floor(lengthNm / widthNm));
  const narrowest = widthsNm.reduce((least, widthNm) => Math.min(least, widthNm), Infinity);
  const panels = Math.floor(sumNm / narrowest);
  const limits = { most, panels, maximumFillerNm };
  return {
    reach,
    least: leastScores(reach, { ...limits, ...(stock && { stock }) }),
    fewest: () => fewestPanels(reach, limits),
  };
}

const candidates = 300;
const stepsOfASplit = 50_000;

/** Fillings of the sum that can be split among the rows; proven while every one before was split or cannot be. */
function splitInOrder(request: RowsRequest, all: Tables, effort: Effort): Fillings {
  const { widthsNm, lengthNm, rows, maximumFillerNm, best } = request;
  const limits = { leastNm: Math.max(0, lengthNm - maximumFillerNm), mostNm: lengthNm };
  const fillings: Filling[] = [];
  let proven = true;
  let [stepsLeft, tried] = [effort.splits, 0];
  for (const { counts } of fillingsInOrder(all.reach, all.least)) {
    const steps = { left: Math.min(stepsLeft, stepsOfASplit) };
    stepsLeft -= steps.left;
    const split = splitIntoRows(widthsNm, counts, rows, limits, steps);
    stepsLeft += steps.left;
    if (split === 'unknown') proven = false;
    else if (split !== 'impossible') fillings.push(settled(fillingOf(request, split)));
    if (fillings.length === best) return { fillings, proven };
    tried += 1;
    if (tried >= candidates + best || stepsLeft <= 0) return { fillings, proven: false };
  }
  return { fillings, proven };
}

/** Every row by itself, from what the rows before it left in stock. */
function oneAfterAnother(request: RowsRequest, effort: Effort): readonly Filling[] {
  let { stock } = request;
  const rows: (readonly number[])[] = [];
  const ofARow = { ...effort, remainders: Math.ceil(effort.remainders / request.rows) };
  for (let row = 0; row < request.rows; row += 1) {
    const asked = { ...request, ...(stock && { stock }), rows: 1, best: 1 };
    const [first] = fillFitting(asked, ofARow).fillings;
    if (first === undefined) return [];
    rows.push(first.counts);
    stock = stock?.map((count, code) => Math.max(0, count - (first.counts[code] ?? 0)));
  }
  return [settled(fillingOf(request, rows))];
}

/** Rows of one height may stand in any order: the one with more of the earlier panel is the lowest. */
function settled(filling: Filling): Filling {
  return { ...filling, rows: [...filling.rows].sort(compareCounts) };
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
