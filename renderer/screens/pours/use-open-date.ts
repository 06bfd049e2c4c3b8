// Saying that a pour has no date yet, or that the one entered stands: one step each, which undo takes back.
import { useCallback } from 'react';
import { useCommand } from '../../client/core.tsx';
import type { Refused } from '../../client/refused.ts';
import { useUndo } from '../../parts/undo.tsx';

export interface OpenDate {
  readonly setOpen: (pour: string, open: boolean) => void;
  readonly busy: boolean;
  readonly error: Refused | null;
}

export function useOpenDate(job: string): OpenDate {
  const { mutateAsync, isPending, error } = useCommand('pour.open');
  const { remember } = useUndo();
  const setOpen = useCallback(
    (pour: string, open: boolean): void => {
      const send = (next: boolean) => mutateAsync({ job, pour, open: next });
      const words = open ? `${pour} has no date yet` : `${pour} keeps the date entered`;
      // What is refused stays in `error`.
      send(open).then(
        () => remember({ words, undo: () => send(!open), redo: () => send(open) }),
        () => undefined,
      );
    },
    [mutateAsync, remember, job],
  );
  return { setOpen, busy: isPending, error };
}
