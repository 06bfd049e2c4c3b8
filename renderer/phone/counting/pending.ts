// The lines of a paper that are on the phone and not in what was last read of it.
import type { Batch, Draft, EntryLine } from '../kept/kept.ts';

/**
 * Oldest first, one list a batch, the draft last: on a count the last one that has a thing is its figure.
 * @param known ids of entries that the paper, as it was read, holds already
 */
export function pendingLines(
  key: string,
  batches: readonly Batch[],
  drafts: readonly Draft[],
  known: ReadonlySet<string>,
): readonly (readonly EntryLine[])[] {
  const sent = batches
    .filter(({ paper, state, id }) => paper.key === key && isOnTheWay(state) && !known.has(id))
    .sort((one, other) => one.at.localeCompare(other.at));
  return [...sent, ...drafts.filter(({ paper }) => paper.key === key)].map(({ lines }) => lines);
}

/** What was refused or is kept for late finds is not counted on the paper. */
function isOnTheWay(state: Batch['state']): boolean {
  return state === 'waiting' || state === 'done';
}

/** Lines that are not known to have come in. */
export function unsentLines(batches: readonly Batch[], drafts: readonly Draft[]): number {
  return linesOnPaper([...batches.filter(({ state }) => state === 'waiting'), ...drafts]);
}

/** As a person counts them: a line of the paper in several conditions is one, on its way twice still one. */
export function linesOnPaper(batches: readonly Pick<Batch, 'paper' | 'lines'>[]): number {
  const keys = batches.flatMap(({ paper, lines }) =>
    lines.map(({ group, component, owner }) => JSON.stringify([paper.key, group, component, owner])),
  );
  return new Set(keys).size;
}

/** "1 line", "14 lines" */
export function linesWords(lines: number): string {
  return `${lines} ${lines === 1 ? 'line' : 'lines'}`;
}

/** "14 lines not yet sent" */
export function unsentWords(lines: number): string {
  if (lines === 0) return 'Everything is sent';
  return `${linesWords(lines)} not yet sent`;
}
