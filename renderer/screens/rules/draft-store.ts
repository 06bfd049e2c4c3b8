// Drafts of rule tables, kept while the window is open: looking at another screen or system loses nothing. Each
// has its own undo and redo.
import { useMemo, useSyncExternalStore } from 'react';
import { useHostState } from '../../client/core.tsx';
import { useOwnHistory } from '../../parts/undo.tsx';
import { catalogueRow } from './catalogue-draft.ts';
import { draftOfRules, type RulesDraft } from './rules-draft.ts';
import type { RulesRead } from './rules-shapes.ts';

interface Step {
  readonly draft: RulesDraft;
  /** What was done to come from here to the next. */
  readonly words: string;
}

interface Kept {
  readonly draft: RulesDraft;
  /** Version of the book with which it began; 0 where the system is new. */
  readonly version: number;
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
}

const drafts = new Map<string, Kept>();
const listeners = new Set<() => void>();
const mostSteps = 200;

function keep(key: string, kept: Kept | null): void {
  if (kept === null) drafts.delete(key);
  else drafts.set(key, kept);
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function draftFromBook(read: RulesRead): RulesDraft {
  const name = read.systems.find(({ code }) => code === read.system)?.name ?? read.system;
  const catalogue = read.components.map((component, index) => catalogueRow(component, index));
  return { system: read.system, systemName: name, ...draftOfRules(read.rules, catalogue.length), catalogue };
}

function emptyDraft(system: string, systemName: string, shared: RulesRead['components']): RulesDraft {
  const catalogue = shared.map((component, index) => catalogueRow(component, index));
  return { system, systemName, ...draftOfRules({}, catalogue.length), catalogue };
}

export interface DraftEdits {
  readonly draft: RulesDraft;
  /** Whether anything was written since it was read from the book. */
  readonly begun: boolean;
  /** Version in the book from which the draft began. */
  readonly fromVersion: number;
  readonly change: (words: string, next: (draft: RulesDraft) => RulesDraft) => void;
  /** Gives the draft up: after saving, or to begin again. */
  readonly drop: () => void;
}

/** The draft of a system: what was written, else what stands in the book; null where there is neither. */
export function useRulesDraft(system: string | null, read: RulesRead | undefined): DraftEdits | null {
  const file = useHostState().data?.book?.file ?? '';
  const key = `${file}\n${system ?? ''}`;
  const kept = useSyncExternalStore(subscribe, () => drafts.get(key));
  const fromBook = useMemo(
    () => (read !== undefined && read.system === system ? draftFromBook(read) : null),
    [read, system],
  );
  const draft = kept?.draft ?? fromBook;
  const version = kept?.version ?? read?.version ?? 0;
  useOwnHistory(
    useMemo(
      () => ({
        undo: () => stepBack(key),
        redo: () => stepForth(key),
        undoWords: kept?.done.at(-1)?.words ?? null,
        redoWords: kept?.undone.at(-1)?.words ?? null,
      }),
      [key, kept],
    ),
  );
  return useMemo(
    () =>
      draft === null
        ? null
        : {
            draft,
            begun: kept !== undefined && kept.done.length > 0,
            fromVersion: version,
            change: (words, next) => {
              const now = drafts.get(key) ?? { draft, version, done: [], undone: [] };
              const after = next(now.draft);
              if (after === now.draft) return;
              const done = [...now.done, { draft: now.draft, words }].slice(-mostSteps);
              keep(key, { ...now, draft: after, done, undone: [] });
            },
            drop: () => keep(key, null),
          },
    [draft, kept, key, version],
  );
}

function stepBack(key: string): void {
  const kept = drafts.get(key);
  const step = kept?.done.at(-1);
  if (kept === undefined || step === undefined) return;
  const undone = [...kept.undone, { draft: kept.draft, words: step.words }];
  keep(key, { ...kept, draft: step.draft, done: kept.done.slice(0, -1), undone });
}

function stepForth(key: string): void {
  const kept = drafts.get(key);
  const step = kept?.undone.at(-1);
  if (kept === undefined || step === undefined) return;
  const done = [...kept.done, { draft: kept.draft, words: step.words }];
  keep(key, { ...kept, draft: step.draft, done, undone: kept.undone.slice(0, -1) });
}

/** Systems that are being written and are not in the book. */
export function useNewSystems(known: ReadonlySet<string>): readonly RulesDraft[] {
  const file = useHostState().data?.book?.file ?? '';
  // The text is what is compared between drawings, so that nothing is drawn again for nothing.
  const list = useSyncExternalStore(subscribe, () =>
    [...drafts.keys()].filter((key) => key.startsWith(`${file}\n`)).join('\t'),
  );
  return useMemo(
    () =>
      list
        .split('\t')
        .flatMap((key) => drafts.get(key)?.draft ?? [])
        .filter(({ system }) => !known.has(system)),
    [list, known],
  );
}

/** Begins a system that the book does not have, with the components that serve in every system. */
export function useBeginSystem(): (
  system: string,
  systemName: string,
  shared: RulesRead['components'],
) => void {
  const file = useHostState().data?.book?.file ?? '';
  return (system, systemName, shared) =>
    keep(`${file}\n${system}`, {
      draft: emptyDraft(system, systemName, shared),
      version: 0,
      done: [],
      undone: [],
    });
}
