// Rows of one height together, code by code: what remains of every row is looked at, not only of their sum, so
// this finds or rules out what the sum alone leaves open. Two ways to the same remainders can be finished in the
// same ways; as many of them as fillings are wanted are followed, the best first.
import { choicesAt, comesBefore, type Begun, type Choice } from './in-order.ts';
import type { Least } from './least.ts';
import { queueBy } from './queue.ts';
import type { Reach } from './reach.ts';

export interface Tables {
  readonly reach: Reach;
  readonly least: Least;
}

interface Row {
  /** Where its remainder stands in the table of one row. */
  readonly place: number;
  readonly counts: readonly number[];
}

interface Stand extends Begun {
  readonly rows: readonly Row[];
  /** Where the remainder of all rows together stands. */
  readonly place: number;
  readonly spent: number;
  /** Panels of the last code that are not yet shared out among the rows: one of these choices. */
  readonly choices?: readonly Choice[];
  readonly which: number;
}

export interface JointFillings {
  /** Counts of each row, the best filling first. */
  readonly found: readonly (readonly (readonly number[])[])[];
  readonly finished: boolean;
}

/** `one` is the table of a single row, where the stock counts for nothing, `all` that of the rows' sum. */
export function fillJointly(
  one: Tables,
  all: Tables,
  rows: number,
  best: number,
  shares: number,
): JointFillings {
  const codes = all.reach.steps.length;
  const queue = queueBy<Stand>(comesBefore);
  const taken = new Map<string, number>();
  const met = new Set<string>();
  const found: (readonly (readonly number[])[])[] = [];
  const foundCounts = new Set<string>();
  let left = shares;
  const start = all.least.scores[0]?.[0] ?? Infinity;
  if (start < Infinity)
    queue.put({
      rows: Array.from({ length: rows }, () => ({ place: 0, counts: [] })),
      ...{ counts: [], place: 0, spent: 0, score: start, which: 0 },
    });
  const putChoice = (from: Stand, choices: readonly Choice[], which: number): void => {
    const choice = choices[which];
    if (choice === undefined) return;
    const code = from.rows[0]?.counts.length ?? 0;
    const counts = [...from.counts.slice(0, code), choice.count];
    queue.put({ ...from, counts, score: choice.score, choices, which });
  };
  for (let stand = queue.take(); stand !== undefined; stand = queue.take()) {
    if (left <= 0) return { found, finished: false };
    const { choices, which } = stand;
    if (choices !== undefined) {
      const choice = choices[which];
      if (choice === undefined) continue;
      putChoice(stand, choices, which + 1);
      const spent = stand.spent + all.least.ofPanels(stand.counts.length - 1, choice.count);
      for (const shared of shareOut(one, stand.rows, choice.count)) {
        left -= 1;
        const key = `${standKey(shared)}=${stand.counts.join(',')}`;
        if (met.has(key)) continue;
        met.add(key);
        const { counts, score } = stand;
        queue.put({ rows: shared, place: choice.place, counts, score, spent, which: 0 });
        if (left <= 0) break;
      }
      continue;
    }
    if (stand.counts.length === codes) {
      const key = stand.counts.join(',');
      if (foundCounts.has(key)) continue;
      foundCounts.add(key);
      found.push(stand.rows.map((row) => row.counts));
      if (found.length === best) return { found, finished: true };
      continue;
    }
    const key = standKey(stand.rows);
    const times = taken.get(key) ?? 0;
    if (times >= best) continue;
    taken.set(key, times + 1);
    const { counts, place, spent } = stand;
    putChoice(stand, choicesAt(all.reach, all.least, counts.length, place, spent), 0);
  }
  return { found, finished: true };
}

function standKey(rows: readonly Row[]): string {
  return `${rows[0]?.counts.length ?? 0}:${rows.map((row) => row.place).join(',')}`;
}

/** All ways to share panels of the next code out among rows, of which each can still be finished. */
function* shareOut(
  one: Tables,
  rows: readonly Row[],
  count: number,
  before: readonly Row[] = [],
): Generator<Row[]> {
  const row = rows[before.length];
  if (row === undefined) {
    if (count === 0) yield [...before].sort((left, right) => left.place - right.place);
    return;
  }
  const code = row.counts.length;
  const after = one.least.scores[code + 1];
  // rows with the same remainder are alike: the first of them takes the most
  const twin = before.length > 0 && rows[before.length - 1]?.place === row.place;
  const most = twin ? (before.at(-1)?.counts[code] ?? 0) : count;
  const less = one.reach.steps[code]?.less;
  let place = one.reach.steps[code]?.same[row.place] ?? -1;
  for (let taken = 0; taken <= Math.min(most, count) && place >= 0; taken += 1) {
    if ((after?.[place] ?? Infinity) < Infinity)
      yield* shareOut(one, rows, count - taken, [...before, { place, counts: [...row.counts, taken] }]);
    place = less?.[place] ?? -1;
  }
}
