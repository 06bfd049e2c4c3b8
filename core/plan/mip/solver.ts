// What the improvement asks of a solver of mixed-integer models: a model that lives, to which columns and rows are added. The
// solver itself is handed in, since it is a library with a memory of its own. Its answers are proposals: plans are costed
// again in whole numbers, and bounds are used with room for its tolerances.

export interface NewColumn {
  readonly cost: number;
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
}

export interface NewRow {
  readonly least: number;
  readonly most: number;
  readonly columns: readonly number[];
  readonly times: readonly number[];
}

export interface Relaxed {
  readonly value: number;
  readonly values: Float64Array;
}

export interface WholeAnswer {
  /** No solution of the model is under it. */
  readonly bound: number;
  /** The best found; null where none was. */
  readonly values: Float64Array | null;
  /** Whether the search came to its end. */
  readonly complete: boolean;
}

export interface WholeLimits {
  readonly nodes: number;
  /** Asked now and then, though not in every part of the search; true ends it. */
  readonly isOver: () => boolean;
  /** A clock of the solver's own ends it too. */
  readonly seconds?: number;
  /** Every better solution as it is found. */
  readonly onFound?: (values: Float64Array) => void;
  /** A solution known before. */
  readonly start?: Float64Array;
}

export interface OpenModel {
  /** The number of the first column added. */
  addColumns(columns: readonly NewColumn[]): number;
  addRows(rows: readonly NewRow[]): void;
  /** Without regard to whole numbers; null where it was ended or failed. */
  relaxed(isOver: () => boolean, seconds?: number): Relaxed | null;
  whole(limits: WholeLimits): WholeAnswer;
}

export interface PlanSolver {
  /** The model is let go when `work` has ended. */
  withModel<T>(work: (model: OpenModel) => T): T;
}
