// Changing pours one after another: every change begins from the pour as the change before it left it, so
// that two quick edits of one pour never undo each other, and every change can be taken back.
import { useCallback, useEffect, useRef } from 'react';
import { useCommand } from '../../client/core.tsx';
import { useUndo } from '../../parts/undo.tsx';
import type { Pour, PourRow } from './pour-shapes.ts';

export interface PourStore {
  readonly busy: boolean;
  /** The pour as last saved here or last read from the book. */
  readonly current: (code: string) => Pour | undefined;
  /** Waits for the changes that were asked for before. */
  readonly inTurn: <T>(work: () => Promise<T>) => Promise<T>;
  /** Saves a pour; `before` is what undoing brings back, null takes the pour out again. */
  readonly send: (before: Pour | null, after: Pour, words: string) => Promise<void>;
  readonly takeOut: (code: string) => Promise<void>;
}

export function usePourStore(job: string, rows: readonly PourRow[]): PourStore {
  const { mutateAsync: saveIt, isPending: saving } = useCommand('pour.save');
  const { mutateAsync: removeIt, isPending: removing } = useCommand('pour.remove');
  const { remember } = useUndo();
  const read = useRef<ReadonlyMap<string, Pour>>(new Map());
  const saved = useRef(new Map<string, Pour>());
  const tail = useRef<Promise<unknown>>(Promise.resolve());

  useEffect(() => {
    // What was read after a save holds that save.
    read.current = new Map(rows.map(({ pour }) => [pour.code, pour]));
    saved.current.clear();
  }, [rows]);

  const current = useCallback((code: string) => saved.current.get(code) ?? read.current.get(code), []);
  const inTurn = useCallback(<T>(work: () => Promise<T>): Promise<T> => {
    const turn = tail.current.then(work);
    tail.current = turn.catch(() => undefined);
    return turn;
  }, []);
  const send = useCallback(
    async (before: Pour | null, after: Pour, words: string): Promise<void> => {
      const { pour } = await saveIt({ job, pour: after });
      saved.current.set(pour.code, pour);
      remember({
        words,
        undo: () => (before === null ? removeIt({ job, pour: after.code }) : saveIt({ job, pour: before })),
        redo: () => saveIt({ job, pour: after }),
      });
    },
    [job, saveIt, removeIt, remember],
  );
  const takeOut = useCallback(
    async (code: string): Promise<void> => {
      const { removed } = await removeIt({ job, pour: code });
      remember({
        words: `${code} removed`,
        undo: () => saveIt({ job, pour: removed }),
        redo: () => removeIt({ job, pour: code }),
      });
    },
    [job, saveIt, removeIt, remember],
  );
  return { busy: saving || removing, current, inTurn, send, takeOut };
}
