// What was typed on a ticket and not entered yet, with the id of the entry it becomes: kept while the window is open, so
// that another screen loses nothing, and an entry that is sent again after a refusal or a fault is the same one.
import { useCallback, useState } from 'react';
import type { CountDraft } from './count-draft.ts';

export interface KeptCount {
  readonly id: string;
  readonly draft: CountDraft;
}

const kept = new Map<string, KeptCount>();

export function useKeptCount(ticket: string): {
  readonly count: KeptCount;
  readonly edit: (by: (old: CountDraft) => CountDraft) => void;
  /** Entered: what comes next is another entry. */
  readonly clear: () => void;
} {
  const [count, setCount] = useState<KeptCount>(() => kept.get(ticket) ?? fresh());
  const put = useCallback(
    (next: KeptCount) => {
      kept.set(ticket, next);
      setCount(next);
    },
    [ticket],
  );
  const edit = useCallback(
    (by: (old: CountDraft) => CountDraft) => {
      const old = kept.get(ticket) ?? fresh();
      // Typed on, it is not the entry that was perhaps sent before.
      put({ id: crypto.randomUUID(), draft: by(old.draft) });
    },
    [ticket, put],
  );
  const clear = useCallback(() => put(fresh()), [put]);
  return { count, edit, clear };
}

function fresh(): KeptCount {
  return { id: crypto.randomUUID(), draft: {} };
}
