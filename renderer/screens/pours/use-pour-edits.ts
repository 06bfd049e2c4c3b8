// Saving pours: each edit goes to the core as a whole pour and can be taken back. What the core or the
// reader refuses stays in its cell as it was typed, with the reason.
import { useCallback, useState } from 'react';
import { useCommand } from '../../client/core.tsx';
import { Refused, wordsOf } from '../../client/refused.ts';
import { useUndo } from '../../parts/undo.tsx';
import type { PastedPour } from './pasted-cells.ts';
import { type CellId, cellOfField, cells } from './pour-cells.ts';
import type { CellContext, Pour } from './pour-shapes.ts';

/** Text that could not become part of its pour, and why. */
export interface CellDraft {
  readonly text: string;
  readonly message: string;
  readonly hint?: string;
}

export function draftKey(code: string, cell: string): string {
  return `${code} ${cell}`;
}

export interface PourEdits {
  readonly drafts: ReadonlyMap<string, CellDraft>;
  /** What was refused and belongs to no cell. */
  readonly error: unknown;
  readonly busy: boolean;
  readonly write: (pour: Pour, cell: CellId, text: string) => void;
  /** Drops a refused text and shows again what stands in the book. */
  readonly drop: (code: string, cell: string) => void;
  /** Saves a changed pour that does not come from a cell. */
  readonly save: (before: Pour | null, after: Pour, words: string) => Promise<boolean>;
  /** Answers how many cells were saved: all of a row, or none. */
  readonly savePasted: (before: Pour, pasted: PastedPour) => Promise<number>;
  readonly remove: (pour: Pour) => Promise<boolean>;
}

export function usePourEdits(job: string, context: CellContext): PourEdits {
  const [drafts, setDrafts] = useState<ReadonlyMap<string, CellDraft>>(new Map());
  const [error, setError] = useState<unknown>(null);
  const { mutateAsync: saveIt, isPending: saving } = useCommand('pour.save');
  const { mutateAsync: removeIt, isPending: removing } = useCommand('pour.remove');
  const { remember } = useUndo();

  const setDraft = useCallback((key: string, draft: CellDraft | null) => {
    setDrafts((old) => {
      const next = new Map(old);
      if (draft === null) next.delete(key);
      else next.set(key, draft);
      return next;
    });
  }, []);

  const send = useCallback(
    async (before: Pour | null, after: Pour, words: string): Promise<void> => {
      await saveIt({ job, pour: after });
      remember({
        words,
        undo: () => (before === null ? removeIt({ job, pour: after.code }) : saveIt({ job, pour: before })),
        redo: () => saveIt({ job, pour: after }),
      });
    },
    [job, saveIt, removeIt, remember],
  );

  const save = async (before: Pour | null, after: Pour, words: string): Promise<boolean> => {
    setError(null);
    try {
      await send(before, after, words);
      return true;
    } catch (refused) {
      setError(refused);
      return false;
    }
  };

  const write = useCallback(
    (pour: Pour, cell: CellId, text: string): void => {
      const key = draftKey(pour.code, cell);
      if (text === cells[cell].text(pour, context)) {
        setDraft(key, null);
        return;
      }
      const written = cells[cell].write(pour, text, context);
      if (!written.ok) {
        setDraft(key, { text, ...wordsOf(new Refused(written.error)) });
        return;
      }
      setError(null);
      send(pour, written.value, `${pour.code}: ${cellWords[cell]} ${text.trim()}`)
        .then(() => setDraft(key, null))
        .catch((refused: unknown) => setDraft(key, { text, ...wordsOf(refused) }));
    },
    [context, send, setDraft],
  );
  const drop = useCallback((code: string, cell: string) => setDraft(draftKey(code, cell), null), [setDraft]);

  const savePasted = async (before: Pour, pasted: PastedPour): Promise<number> => {
    for (const { cell, text, refusal } of pasted.refused)
      setDraft(draftKey(before.code, cell), { text, ...wordsOf(new Refused(refusal)) });
    if (pasted.refused.length > 0 || pasted.changed.length === 0) return 0;
    try {
      await send(before, pasted.pour, `${before.code}: ${pasted.changed.length} pasted cells`);
      for (const cell of pasted.changed) setDraft(draftKey(before.code, cell), null);
      return pasted.changed.length;
    } catch (refused) {
      const named = refused instanceof Refused ? cellOfField(refused.field) : undefined;
      const at = pasted.changed.find((cell) => cell === named) ?? pasted.changed[0];
      if (at === undefined) return 0;
      // Nothing of the row was saved: every pasted text stays in its cell, the reason at the one it names.
      for (const cell of pasted.changed) {
        const text = cells[cell].text(pasted.pour, context);
        const words = cell === at ? wordsOf(refused) : { message: `Not saved: see ${cellWords[at]}.` };
        setDraft(draftKey(before.code, cell), { text, ...words });
      }
      return 0;
    }
  };

  const remove = async (pour: Pour): Promise<boolean> => {
    setError(null);
    try {
      const { removed } = await removeIt({ job, pour: pour.code });
      remember({
        words: `${pour.code} removed`,
        undo: () => saveIt({ job, pour: removed }),
        redo: () => removeIt({ job, pour: removed.code }),
      });
      return true;
    } catch (refused) {
      setError(refused);
      return false;
    }
  };

  return {
    drafts,
    error,
    busy: saving || removing,
    write,
    drop,
    save,
    savePasted,
    remove,
  };
}

export const cellWords: Readonly<Record<CellId, string>> = {
  name: 'name',
  element: 'element',
  order: 'order',
  setA: 'set side A',
  setAH: 'hours of setting side A',
  setB: 'set side B',
  setBH: 'hours of setting side B',
  finish: 'finish',
  minimumH: 'minimum hours',
  stripH: 'strip hours',
  after: 'after',
};
