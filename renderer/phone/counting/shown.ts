// A paper as it is shown on the phone, out of all that is kept.
import type { Kept } from '../kept/state.ts';
import type { KeptPaper } from '../kept/kept.ts';
import { countGroups, type CountGroup, type CountLine, ticketGroups } from './figures.ts';
import { pendingLines } from './pending.ts';

export function shownGroups(kept: Kept, paper: KeptPaper): readonly CountGroup[] {
  const { batches, drafts } = kept;
  if (paper.kind === 'ticket') {
    const known = new Set(paper.read.entries.map(({ id }) => id));
    return ticketGroups(paper.read, pendingLines(paper.key, batches, drafts, known));
  }
  return countGroups(paper.read, paper.counter, pendingLines(paper.key, batches, drafts, new Set()));
}

export function lineKey({
  group,
  component,
  owner,
}: Pick<CountLine, 'group' | 'component' | 'owner'>): string {
  return JSON.stringify([group, component, owner]);
}

export function findLine(groups: readonly CountGroup[], key: string): CountLine | null {
  return groups.flatMap(({ lines }) => lines).find((line) => lineKey(line) === key) ?? null;
}
