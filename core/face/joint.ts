// Rows of one height together, code by code: what remains of every row is looked at, not only of their sum, so
// this finds or rules out what the sum alone leaves open. Two ways to the same remainders can be finished in the
// same ways; as many of them as fillings are wanted are followed, the best first.
import { type Begun, type Choice, choicesAt, comesBefore } from './in-order.ts';
import { queueBy } from './queue.ts';
import type { Steps } from './rows.ts';
import { countsOf, type OpenRow, shareOut, type Tables } from './share-out.ts';

interface Stand extends Begun {
  readonly rows: readonly OpenRow[];
  /** Codes that are shared out among the rows. */
  readonly codes: number;
  /** Where the remainder of all rows together stands, and the score of their panels. */
  readonly place: number;
  readonly spent: number;
  /** How many of the next code: `counts` ends with this one of the choices, which is not yet shared out. */
  readonly choices?: readonly Choice[];
  readonly which: number;
}

export interface JointFillings {
  /** Counts of each row, the best filling first. */
  readonly found: readonly (readonly (readonly number[])[])[];
  /** False where the steps ended before so many were found or there were no more. */
  readonly finished: boolean;
}

/** `one` is the table of a single row, where the stock counts for nothing, `all` that of the rows' sum. */
export function fillJointly(
  one: Tables,
  all: Tables,
  rows: number,
  best: number,
  steps: Steps,
): JointFillings {
  const queue = queueBy<Stand>(comesBefore);
  const found: (readonly (readonly number[])[])[] = [];
  const followed = new Map<string, number>();
  const met = new Set<string>();
  const score = all.least.scores[0]?.[0] ?? Infinity;
  const unbegun: OpenRow = { place: 0, taken: 0, from: null };
  const start = { rows: Array.from({ length: rows }, () => unbegun), codes: 0, counts: [], score };
  if (score < Infinity) queue.put({ ...start, place: 0, spent: 0, which: 0 });
  const fewest = one.fewest();
  /** What the rows need at least, each by itself: their sum alone may look as if fewer panels would do. */
  const needed = (places: readonly OpenRow[], codes: number): number => {
    const count = places.reduce((sum, row) => sum + (fewest[codes]?.[row.place] ?? 0), 0);
    return all.least.ofAny(count, Math.max(0, count - all.least.stockFrom(codes)));
  };
  /** True the first time. */
  const isNew = (key: string): boolean => met.size < met.add(key).size;

  for (let stand = queue.take(); stand !== undefined; stand = queue.take()) {
    if (steps.left <= 0) return { found, finished: false };
    const { choices, which, codes, counts } = stand;
    if (choices !== undefined) {
      putChoice(queue.put, stand, choices, which + 1);
      const choice = choices[which];
      if (choice === undefined) continue;
      const spent = stand.spent + all.least.ofPanels(codes, choice.count);
      const way = counts.join(',');
      for (const shared of shareOut(one, codes, stand.rows, choice.count, steps)) {
        if (!isNew(`${placesOf(shared)}=${way}`)) continue;
        const least = spent + Math.max(choice.score - spent, needed(shared, codes + 1));
        queue.put({
          rows: shared,
          codes: codes + 1,
          place: choice.place,
          counts,
          score: least,
          spent,
          which: 0,
        });
      }
      continue;
    }
    if (codes === all.reach.steps.length) {
      if (!isNew(counts.join(','))) continue;
      found.push(stand.rows.map(countsOf));
      if (found.length === best) return { found, finished: true };
      continue;
    }
    const key = `${codes}:${placesOf(stand.rows)}`;
    const times = followed.get(key) ?? 0;
    if (times >= best) continue;
    followed.set(key, times + 1);
    const open = choicesAt(all.reach, all.least, codes, stand.place, stand.spent);
    steps.left -= open.length;
    putChoice(queue.put, stand, open, 0);
  }
  return { found, finished: steps.left > 0 };
}

function putChoice(
  put: (stand: Stand) => void,
  stand: Stand,
  choices: readonly Choice[],
  which: number,
): void {
  const choice = choices[which];
  if (choice === undefined) return;
  const counts = [...stand.counts.slice(0, stand.codes), choice.count];
  put({ ...stand, counts, score: choice.score, choices, which });
}

function placesOf(rows: readonly OpenRow[]): string {
  return rows.map((row) => row.place).join(',');
}
