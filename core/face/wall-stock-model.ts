// Which of the best ways to fill the legs of a wall takes the fewest panels beyond the stock, then the least filler,
// then the fewest panels: as whole numbers of times that each step between two states is done, of each piece that is
// used, and of panels that are short. A way through a leg is a walk from its first state to its last, so what comes
// into a state goes out of it; that the walk hangs together is demanded where an answer breaks it (walkOf).
import { never } from '../answer.ts';
import type { StateStep, Walk } from './wall-walk.ts';
import type { LegToFill } from './wall-steps.ts';
import type { PieceClass } from './wall-pieces.ts';
import type { SideName } from './wall.ts';

/** A model in whole numbers: least cost, every row between its limits, every column between 0 and its most. */
export interface WholeModel {
  readonly columns: readonly { readonly most: number }[];
  readonly rows: readonly ModelRow[];
}

export interface ModelRow {
  readonly least: number;
  readonly most: number;
  readonly entries: readonly (readonly [column: number, times: number])[];
}

export interface LegOfModel {
  readonly walk: Walk;
  readonly leg: LegToFill;
}

export interface StockModel extends WholeModel {
  /** Columns of each leg's steps, in the order of its walk's steps. */
  readonly stepColumns: readonly (readonly number[])[];
  /** Columns of pieces by class. */
  readonly pieceColumns: readonly (readonly number[])[];
  /** Costs in the order in which they count: panels short, filler, panels. */
  readonly costs: readonly (readonly number[])[];
}

export function stockModel(
  legs: readonly LegOfModel[],
  classes: readonly PieceClass[],
  stock: Readonly<Record<string, number>>,
): StockModel {
  const columns: { most: number }[] = [];
  const rows: ModelRow[] = [];
  const column = (most: number): number => columns.push({ most }) - 1;
  const mostSteps = legs.map(({ leg }) => stepsAtMost(leg));
  const stepColumns = legs.map(({ walk }, index) =>
    walk.steps.map(({ step }) =>
      column(step.kind === 'finish' || step.kind === 'filler' ? 1 : (mostSteps[index] ?? 0)),
    ),
  );
  const all = mostSteps.reduce((sum, each) => sum + each, 0);
  const pieceColumns = classes.map(({ pieces }) => pieces.map(() => column(all)));
  const codes = [...new Set(classes.flatMap(({ pieces }) => pieces.flatMap(({ uses }) => [...uses.keys()])))];
  const perPiece = classes.flatMap(({ pieces }) => pieces.map(({ panelCount }) => panelCount));
  const shortMost = all * Math.max(1, ...perPiece);
  const shortColumns = codes.map(() => column(shortMost));
  const unit = classes.map(({ widthNm }) => widthNm).reduce(greatestCommonDivisor, 0);
  for (const [index, { walk, leg }] of legs.entries())
    rows.push(...legRows(walk, leg, stepColumns[index] ?? [], unit));
  rows.push(...classRows(legs, classes, stepColumns, pieceColumns));
  for (const [index, code] of codes.entries()) {
    const entries = pieceEntries(classes, pieceColumns, ({ uses }) => uses.get(code) ?? 0);
    const short = shortColumns[index] ?? -1;
    // short at least what is used beyond the stock
    rows.push({ least: -shortMost, most: stock[code] ?? 0, entries: [...entries, [short, -1]] });
  }
  return {
    columns,
    rows,
    stepColumns,
    pieceColumns,
    costs: [
      costOf(
        columns.length,
        shortColumns.map((each) => [each, 1]),
      ),
      fillerCost(columns.length, legs, stepColumns),
      costOf(
        columns.length,
        pieceEntries(classes, pieceColumns, ({ panelCount }) => panelCount),
      ),
    ],
  };
}

function stepsAtMost({ lengthNm, overhangNm, classes }: LegToFill): number {
  const narrowest = Math.min(...classes.map(({ widthNm }) => widthNm));
  return Math.ceil((lengthNm.A + lengthNm.B + 2 * overhangNm) / narrowest) + 1;
}

/** More than both sides of a leg cannot be covered, even with what reaches beyond it. */
function mostCovered({ lengthNm, overhangNm }: LegToFill): number {
  return lengthNm.A + lengthNm.B + 2 * overhangNm;
}

function equal(entries: readonly [number, number][], value: number): ModelRow {
  return { least: value, most: value, entries };
}

/** In and out of every state; as long as the leg is on either side; as much covered and alone as the best. */
function legRows(walk: Walk, leg: LegToFill, columns: readonly number[], unit: number): readonly ModelRow[] {
  const atState = new Map<number, Map<number, number>>();
  const add = (state: number, column: number, times: number): void => {
    const entries = atState.get(state) ?? new Map<number, number>();
    entries.set(column, (entries.get(column) ?? 0) + times);
    atState.set(state, entries);
  };
  const along = { A: [] as [number, number][], B: [] as [number, number][] };
  const covered: [number, number][] = [];
  const alone: [number, number][] = [];
  for (const [index, { from, to, step, alone: left }] of walk.steps.entries()) {
    const column = columns[index] ?? -1;
    add(from, column, 1);
    add(to, column, -1);
    if (left > 0) alone.push([column, left]);
    for (const side of ['A', 'B'] as const) {
      const times = lengthOf(step, side, leg, unit);
      if (times !== 0) along[side].push([column, times]);
    }
    const length = coveredBy(step, leg);
    if (length > 0) covered.push([column, length / unit]);
  }
  return [
    ...[...atState].map(([state, entries]) =>
      equal(
        [...entries].filter(([, times]) => times !== 0),
        Number(state === walk.start) - Number(state === walk.end),
      ),
    ),
    equal(along.A, 0),
    equal(along.B, 0),
    // what of a gang on paper reaches beyond the leg covers none of it: whoever places the gangs looks again
    ...(covered.length > 0
      ? [{ least: walk.coveredNm / unit, most: mostCovered(leg) / unit, entries: covered }]
      : []),
    ...(alone.length > 0 ? [equal(alone, walk.alone - walk.aloneAtStart)] : []),
  ];
}

/**
 * What a step adds to the panels of a side, in the common unit of their widths, less what the step says that they
 * have to come to: whoever finishes without a filler, or takes one, settles that.
 */
function lengthOf(step: StateStep['step'], side: SideName, leg: LegToFill, unit: number): number {
  switch (step.kind) {
    case 'piece':
      return step.side === side ? (leg.classes[step.class]?.widthNm ?? 0) / unit : 0;
    case 'both':
      return (leg.classes[step.class]?.widthNm ?? 0) / unit;
    case 'filler': {
      const fillerNm = step.widthsNm[side];
      return fillerNm === undefined ? 0 : -whole((leg.lengthNm[side] - fillerNm) / unit);
    }
    case 'finish':
      if (step.side !== side || step.isFilled) return 0;
      return -whole((leg.lengthNm[side] + step.overhangNm) / unit);
    default:
      return never(step);
  }
}

function whole(value: number): number {
  if (!Number.isInteger(value)) throw new Error('A length to fill is no multiple of the widths.');
  return value;
}

function coveredBy(step: StateStep['step'], leg: LegToFill): number {
  if (step.kind !== 'piece' && step.kind !== 'both') return 0;
  const found = leg.classes[step.class];
  return found?.isDesign === true ? found.widthNm * (step.kind === 'both' ? 2 : 1) : 0;
}

/** As many pieces of a class as its steps take. */
function classRows(
  legs: readonly LegOfModel[],
  classes: readonly PieceClass[],
  stepColumns: readonly (readonly number[])[],
  pieceColumns: readonly (readonly number[])[],
): readonly ModelRow[] {
  return classes.map((_, number) => ({
    least: 0,
    most: 0,
    entries: [
      ...legs.flatMap(({ walk }, leg) =>
        walk.steps.flatMap(({ step }, index): [number, number][] =>
          (step.kind === 'piece' || step.kind === 'both') && step.class === number
            ? [[stepColumns[leg]?.[index] ?? -1, step.kind === 'both' ? 2 : 1]]
            : [],
        ),
      ),
      ...(pieceColumns[number] ?? []).map((column): [number, number] => [column, -1]),
    ],
  }));
}

function pieceEntries(
  classes: readonly PieceClass[],
  pieceColumns: readonly (readonly number[])[],
  times: (piece: PieceClass['pieces'][number]) => number,
): readonly (readonly [number, number])[] {
  return classes
    .flatMap(({ pieces }, number) =>
      pieces.map((piece, index): [number, number] => [pieceColumns[number]?.[index] ?? -1, times(piece)]),
    )
    .filter(([, count]) => count !== 0);
}

/** Filler widths by rank times their common divisor: small whole numbers. */
function fillerCost(
  count: number,
  legs: readonly LegOfModel[],
  stepColumns: readonly (readonly number[])[],
): readonly number[] {
  const widths = legs.flatMap(({ walk }, leg) =>
    walk.steps.flatMap(({ step }, index): [number, number][] =>
      step.kind === 'filler'
        ? [[stepColumns[leg]?.[index] ?? -1, (step.widthsNm.A ?? 0) + (step.widthsNm.B ?? 0)]]
        : [],
    ),
  );
  const unit = widths.reduce((divisor, [, width]) => greatestCommonDivisor(divisor, width), 0);
  return costOf(
    count,
    widths.map(([column, width]) => [column, width / Math.max(1, unit)]),
  );
}

function costOf(count: number, entries: readonly (readonly [number, number])[]): readonly number[] {
  const costs = Array.from({ length: count }, () => 0);
  for (const [column, cost] of entries) costs[column] = cost;
  return costs;
}

function greatestCommonDivisor(one: number, other: number): number {
  return other === 0 ? one : greatestCommonDivisor(other, one % other);
}
