// Carrying changes of the plan out as one step that undo takes back; redo carries them out again under a new id.
import { useCallback } from 'react';
import { useCommand } from '../../client/core.tsx';
import type { Refused } from '../../client/refused.ts';
import { useUndo } from '../undo.tsx';
import type { PlanChange } from './change-text.ts';

export interface Apply {
  /** Settles when it is done; a refusal is thrown and stays in `error` too. */
  readonly apply: (changes: readonly PlanChange[], about: string) => Promise<void>;
  readonly busy: boolean;
  readonly error: Refused | null;
  readonly reset: () => void;
}

export function useApply(job: string): Apply {
  const { mutateAsync, isPending, error, reset } = useCommand('plan.apply');
  const { mutateAsync: takeBack } = useCommand('plan.takeback');
  const { remember } = useUndo();
  const apply = useCallback(
    async (changes: readonly PlanChange[], about: string) => {
      const carryOut = () => mutateAsync({ job, changes: [...changes], about });
      let { applied } = await carryOut();
      remember({
        words: about,
        undo: () => takeBack({ job, applied }),
        redo: async () => {
          ({ applied } = await carryOut());
        },
      });
    },
    [mutateAsync, takeBack, remember, job],
  );
  return { apply, busy: isPending, error, reset };
}
