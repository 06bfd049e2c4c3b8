// What was typed on a count and not entered or booked yet, kept while the window is open: looking at another screen
// loses nothing.
import { useCallback, useState } from 'react';

const kept = new Map<string, unknown>();

/** @param key of the count and what is typed on it */
export function useKeptTyping<T>(key: string, begin: T): [T, (change: (old: T) => T) => void] {
  const [state, setState] = useState(() => ({ key, value: (kept.get(key) as T | undefined) ?? begin }));
  const value = state.key === key ? state.value : ((kept.get(key) as T | undefined) ?? begin);
  const change = useCallback(
    (by: (old: T) => T) => {
      const next = by((kept.get(key) as T | undefined) ?? begin);
      kept.set(key, next);
      setState({ key, value: next });
    },
    [key, begin],
  );
  return [value, change];
}
