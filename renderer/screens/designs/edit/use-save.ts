// Keeping a design: once kept, its edit can be taken back from anywhere, as edits of pours are.
import { useState } from 'react';
import { useCommand } from '../../../client/core.tsx';
import { Refused, wordsOf } from '../../../client/refused.ts';
import { useUndo } from '../../../parts/undo.tsx';
import { fieldOf, type FieldProblem, type SavedDesign } from './design-draft.ts';

export interface Save {
  readonly busy: boolean;
  readonly problems: readonly FieldProblem[];
  readonly refuse: (problems: readonly FieldProblem[]) => void;
  /** Answers whether it was kept. `before` is what undoing brings back; null for a new design. */
  readonly save: (before: SavedDesign | null, design: SavedDesign) => Promise<boolean>;
}

export function useSave(): Save {
  const { mutateAsync: saveIt, isPending: saving } = useCommand('design.save');
  const { mutateAsync: removeIt } = useCommand('design.remove');
  const { remember } = useUndo();
  const [problems, setProblems] = useState<readonly FieldProblem[]>([]);
  return {
    busy: saving,
    problems,
    refuse: setProblems,
    save: async (before, design) => {
      setProblems([]);
      try {
        await saveIt({ design, isNew: before === null });
      } catch (error) {
        const field = error instanceof Refused ? fieldOf(error.field) : '';
        setProblems([{ field, ...wordsOf(error) }]);
        return false;
      }
      remember({
        words: before === null ? `design ${design.code}` : `${design.code} changed`,
        undo: () =>
          before === null ? removeIt({ design: design.code }) : saveIt({ design: before, isNew: false }),
        redo: () => saveIt({ design, isNew: before === null }),
      });
      return true;
    },
  };
}

/** Takes a design out of the book; it can be put back. */
export function useTakeOut(): {
  readonly busy: boolean;
  readonly error: Error | null;
  readonly takeOut: (code: string) => Promise<boolean>;
} {
  const { mutateAsync: saveIt } = useCommand('design.save');
  const { mutateAsync: savePick } = useCommand('pick.save');
  const { mutateAsync: removeIt, isPending, error } = useCommand('design.remove');
  const { remember } = useUndo();
  return {
    busy: isPending,
    error,
    takeOut: async (code) => {
      try {
        const { removed, pick } = await removeIt({ design: code });
        remember({
          words: `design ${code} removed`,
          undo: async () => {
            await saveIt({ design: removed, isNew: true });
            if (pick !== null) await savePick({ design: code, setup: pick });
          },
          redo: () => removeIt({ design: code }),
        });
        return true;
      } catch {
        // Shown where it was asked for.
        return false;
      }
    },
  };
}
