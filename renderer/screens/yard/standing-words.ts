// Lines of the yard that are not where they belong, in words: found with us and not ours, and ours at another job.
import type { Output } from '../../client/core.tsx';
import type { StockRow } from './yard-words.ts';

type ForeignRow = Output<'yard.foreign'>['rows'][number];
type Line = Pick<StockRow, 'component' | 'owner' | 'location' | 'condition'>;

export function lineKey({ component, owner, location, condition }: Line): string {
  return [component, owner, location, condition].join(' ');
}

/** "found, not ours", "ours at another job, no note"; only of the lines that stand so. */
export function standingOf(rows: readonly ForeignRow[]): ReadonlyMap<string, string> {
  return new Map(rows.map((row) => [lineKey(row), wordsOf(row)]));
}

function wordsOf({ what, noteNumber }: ForeignRow): string {
  if (what === 'not-ours') return 'found, not ours';
  return `ours at another job, ${noteNumber === null ? 'no note' : `note ${noteNumber}`}`;
}
