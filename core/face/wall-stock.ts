// Asks a solver for the best answer of the stock model, one cost after another, and reads it with whole numbers only:
// every row is checked again exactly, and a walk that does not hang together is refused until one does.
import { type ModelRow, type StockModel, type WholeModel } from './wall-stock-model.ts';
import type { StateStep, Walk } from './wall-walk.ts';

/** 'best' only where no better one exists; 'some' is an answer of which that is not known. */
export type Solved =
  | { readonly status: 'best' | 'some'; readonly values: readonly number[] }
  | { readonly status: 'none' };

/** Solves a model in whole numbers for least cost; values come as the solver's numbers and are rounded here. */
export type SolveWhole = (model: WholeModel, cost: readonly number[]) => Solved;

export interface StockAnswer {
  /** Way of each leg. */
  readonly ways: readonly (readonly StateStep[])[];
  /** How often each piece is used, by class. */
  readonly pieces: readonly (readonly number[])[];
  readonly proven: boolean;
}

/** Cuts for walks in parts, at most. */
const mostRounds = 60;

/** Undefined where the solver gave no answer that holds. */
export function chooseByStock(
  walks: readonly Walk[],
  model: StockModel,
  solve: SolveWhole,
): StockAnswer | undefined {
  const extra: ModelRow[] = [];
  let values: readonly number[] | undefined;
  let proven = true;
  for (const cost of model.costs) {
    const found = solveWhole(walks, model, extra, cost, solve);
    if (found === undefined) {
      proven = false;
      break;
    }
    values = found.values;
    if (!found.isBest) {
      proven = false;
      break;
    }
    const least = valueOf(cost, found.values);
    extra.push({
      least: 0,
      most: least,
      entries: cost.flatMap((each, at) => (each === 0 ? [] : [[at, each]])),
    });
  }
  if (values === undefined) return undefined;
  const chosen = values;
  return {
    ways: walks.map((walk, leg) => {
      const way = walkOf(
        walk,
        (model.stepColumns[leg] ?? []).map((column) => chosen[column] ?? 0),
      );
      if (way.rest !== undefined) throw new Error('A way of the solver does not hang together.');
      return way.steps;
    }),
    pieces: model.pieceColumns.map((columns) => columns.map((column) => chosen[column] ?? 0)),
    proven,
  };
}

function solveWhole(
  walks: readonly Walk[],
  model: StockModel,
  extra: ModelRow[],
  cost: readonly number[],
  solve: SolveWhole,
): { values: readonly number[]; isBest: boolean } | undefined {
  for (let round = 0; round < mostRounds; round += 1) {
    const rows = [...model.rows, ...extra];
    const solved = solve({ columns: model.columns, rows }, cost);
    if (solved.status === 'none') return undefined;
    const values = solved.values.map((value) => Math.round(value));
    if (!holds({ columns: model.columns, rows }, values)) return undefined;
    const cuts = walks.flatMap((walk, leg) => {
      const columns = model.stepColumns[leg] ?? [];
      const { rest } = walkOf(
        walk,
        columns.map((column) => values[column] ?? 0),
      );
      return rest === undefined ? [] : [cutFor(walk, columns, rest, model)];
    });
    if (cuts.length === 0) return { values, isBest: solved.status === 'best' };
    extra.push(...cuts);
  }
  return undefined;
}

function holds({ columns, rows }: WholeModel, values: readonly number[]): boolean {
  return (
    columns.every(({ most }, index) => {
      const value = values[index] ?? -1;
      return Number.isSafeInteger(value) && value >= 0 && value <= most;
    }) &&
    rows.every(({ least, most, entries }) => {
      const sum = entries.reduce((all, [column, times]) => all + times * (values[column] ?? 0), 0);
      return sum >= least && sum <= most;
    })
  );
}

function valueOf(cost: readonly number[], values: readonly number[]): number {
  return cost.reduce((sum, each, index) => sum + each * (values[index] ?? 0), 0);
}

/** What is done among states apart from the walk is done only where some step leads there. */
function cutFor(
  walk: Walk,
  columns: readonly number[],
  apart: ReadonlySet<number>,
  model: StockModel,
): ModelRow {
  const entries: [number, number][] = [];
  let inside = 0;
  for (const [index, { from, to }] of walk.steps.entries()) {
    if (apart.has(from) && apart.has(to)) inside += model.columns[columns[index] ?? -1]?.most ?? 0;
  }
  for (const [index, { from, to }] of walk.steps.entries()) {
    const column = columns[index] ?? -1;
    if (apart.has(from) && apart.has(to)) entries.push([column, 1]);
    else if (apart.has(to)) entries.push([column, -inside]);
  }
  return { least: -inside * columns.length * inside, most: 0, entries };
}

/**
 * A walk from the first state to the last that does every step as often as told: from each state on until none is
 * left, with the rounds that were passed over put in where they begin (Hierholzer 1873). `rest`: states of a part
 * that the walk never meets.
 */
export function walkOf(
  walk: Walk,
  times: readonly number[],
): { steps: readonly StateStep[]; rest: ReadonlySet<number> | undefined } {
  const out = new Map<number, { step: StateStep; left: number }[]>();
  let total = 0;
  for (const [index, step] of walk.steps.entries()) {
    const left = times[index] ?? 0;
    if (left === 0) continue;
    total += left;
    out.set(step.from, [...(out.get(step.from) ?? []), { step, left }]);
  }
  const stack: (StateStep | undefined)[] = [undefined];
  const done: StateStep[] = [];
  while (stack.length > 0) {
    const last = stack.at(-1);
    const state = last === undefined ? walk.start : last.to;
    const next = out.get(state)?.find(({ left }) => left > 0);
    if (next === undefined) {
      stack.pop();
      if (last !== undefined) done.push(last);
    } else {
      next.left -= 1;
      stack.push(next.step);
    }
  }
  const rest = new Set<number>();
  if (done.length < total) {
    const first = [...out.values()].flat().find(({ left }) => left > 0);
    const open = first === undefined ? [] : [first.step.from];
    for (let state = open.pop(); state !== undefined; state = open.pop()) {
      if (rest.has(state)) continue;
      rest.add(state);
      for (const { step, left } of out.get(state) ?? []) if (left > 0) open.push(step.to);
    }
  }
  return { steps: done.reverse(), rest: rest.size > 0 ? rest : undefined };
}
