// Shares panels of one code out among rows of one length, in every way in which each row can still be finished.
import type { Least } from './least.ts';
import type { Reach } from './reach.ts';
import type { Steps } from './rows.ts';

export interface Tables {
  readonly reach: Reach;
  readonly least: Least;
  /** The fewest panels from each remainder on, whatever the stock. */
  readonly fewest: () => readonly Float64Array[];
}

/** A row after some codes: where its remainder stands, and how it came there. */
export interface OpenRow {
  readonly place: number;
  /** Panels of the last code. */
  readonly taken: number;
  readonly from: OpenRow | null;
}

/**
 * `table` is that of a single row; rows with the same remainder stand side by side. Ends early where the steps do.
 * @param code the code that is shared out, by its place in the table
 */
export function* shareOut(
  table: Tables,
  code: number,
  rows: readonly OpenRow[],
  count: number,
  steps: Steps,
  before: readonly OpenRow[] = [],
): Generator<readonly OpenRow[]> {
  steps.left -= 1;
  const row = rows[before.length];
  const step = table.reach.steps[code];
  const after = table.least.scores[code + 1];
  if (row === undefined) {
    yield [...before].sort((left, right) => left.place - right.place);
    return;
  }
  if (step === undefined || after === undefined) return;
  // rows with the same remainder are alike: the first of them takes the most
  const alike = before.length > 0 && rows[before.length - 1]?.place === row.place;
  const most = alike ? Math.min(count, before.at(-1)?.taken ?? 0) : count;
  const least = before.length === rows.length - 1 ? count : 0;
  let place = step.same[row.place] ?? -1;
  for (let taken = 0; taken <= most && place >= 0 && steps.left > 0; taken += 1) {
    if (taken >= least && (after[place] ?? Infinity) < Infinity)
      yield* shareOut(table, code, rows, count - taken, steps, [...before, { place, taken, from: row }]);
    place = step.less[place] ?? -1;
  }
}

/** How many of each code, in catalogue order. */
export function countsOf(row: OpenRow): readonly number[] {
  const counts: number[] = [];
  for (let at = row; at.from !== null; at = at.from) counts.push(at.taken);
  return counts.reverse();
}
