// What is typed into a form of this screen, kept while the window is open: closing the pane or looking at another
// screen loses nothing. One draft a form and thing.
import { useCallback, useState } from 'react';

const kept = new Map<string, unknown>();

export interface Kept<T> {
  readonly draft: T;
  readonly set: (part: Partial<T>) => void;
  readonly clear: () => void;
}

/** @param key names the form and the thing it is about; @param begin what stands in it before anything is typed */
export function useKept<T extends object>(key: string, begin: T): Kept<T> {
  const [draft, setDraft] = useState<T>(() => (kept.get(key) as T | undefined) ?? begin);
  const set = useCallback(
    (part: Partial<T>) => {
      setDraft((old) => {
        const next = { ...old, ...part };
        kept.set(key, next);
        return next;
      });
    },
    [key],
  );
  const clear = useCallback(() => {
    kept.delete(key);
    setDraft(begin);
    // What a form begins with is the caller's own and made anew each time; only its key tells forms apart.
  }, [key, begin]);
  return { draft, set, clear };
}
