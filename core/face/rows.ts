// What is asked of rows of one height that share one stock, and what is answered.

export interface RowsRequest {
  readonly lengthNm: number;
  /** How many such rows, at least one. */
  readonly rows: number;
  /** Widths of the panels of that height, in catalogue order. */
  readonly widthsNm: readonly number[];
  /** Panels there are of each, in the same order; absent: always enough. */
  readonly stock?: readonly number[];
  /** Of each row. */
  readonly maximumFillerNm: number;
  /** How many fillings are wanted at most. */
  readonly best: number;
}

export interface Filling {
  /** How many of each panel, all rows together, in the order of the widths. */
  readonly counts: readonly number[];
  /** The same for each row; they add up to `counts`. */
  readonly rows: readonly (readonly number[])[];
  /** Panels beyond the stock. */
  readonly shortage: number;
  /** All rows together. */
  readonly fillerNm: number;
  readonly panelCount: number;
}

export interface Fillings {
  /** The best first. No two have the same counts. */
  readonly fillings: readonly Filling[];
  /** Is there no better one than each of these, nor, where they are fewer than wanted, any other? */
  readonly proven: boolean;
}

/** Steps of work, not seconds: the same question has the same answer on every machine. */
export interface Effort {
  /** Remainders looked at for a length. */
  readonly remainders: number;
  /** Steps of splitting the panels of all rows among them. */
  readonly splits: number;
  /** Steps of filling the rows jointly. */
  readonly shares: number;
}

export const fullEffort: Effort = { remainders: 6_000_000, splits: 400_000, shares: 2_000_000 };

/** What is left of an effort, counted down by those who share it. */
export interface Steps {
  left: number;
}

export function fillingOf(request: RowsRequest, rows: readonly (readonly number[])[]): Filling {
  const { widthsNm, stock, lengthNm } = request;
  const counts = widthsNm.map((_, code) => rows.reduce((sum, row) => sum + (row[code] ?? 0), 0));
  const over = (count: number, code: number): number => Math.max(0, count - (stock?.[code] ?? Infinity));
  return {
    counts,
    rows,
    shortage: counts.reduce((sum, count, code) => sum + over(count, code), 0),
    fillerNm: lengthNm * request.rows - widthOf(widthsNm, counts),
    panelCount: counts.reduce((sum, count) => sum + count, 0),
  };
}

export function widthOf(widthsNm: readonly number[], counts: readonly number[]): number {
  return widthsNm.reduce((sum, widthNm, code) => sum + widthNm * (counts[code] ?? 0), 0);
}
