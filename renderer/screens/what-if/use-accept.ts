// Accepting a what-if: its changes are carried out, and where it was kept it is no longer needed. Undo takes both back.
import { useCallback } from 'react';
import { useCommand } from '../../client/core.tsx';
import type { PlanChange } from '../../parts/changes/change-text.ts';
import { useUndo } from '../../parts/undo.tsx';

interface KeptName {
  readonly id: string;
  readonly name: string;
}

export function useAccept(job: string) {
  const { mutateAsync: apply, isPending, error } = useCommand('plan.apply');
  const { mutateAsync: takeBack } = useCommand('plan.takeback');
  const { mutateAsync: keep } = useCommand('whatif.keep');
  const { mutateAsync: drop } = useCommand('whatif.drop');
  const { remember } = useUndo();
  const accept = useCallback(
    async (changes: readonly PlanChange[], about: string, kept: KeptName | null) => {
      const all = [...changes];
      let id = kept?.id ?? null;
      const forth = async (): Promise<string> => {
        const { applied } = await apply({ job, changes: all, about });
        if (id !== null) await drop({ job, id });
        return applied;
      };
      let applied = await forth();
      remember({
        words: about,
        undo: async () => {
          await takeBack({ job, applied });
          if (kept !== null) ({ id } = await keep({ job, name: kept.name, changes: all }));
        },
        redo: async () => {
          applied = await forth();
        },
      });
    },
    [apply, takeBack, keep, drop, remember, job],
  );
  return { accept, busy: isPending, error };
}
