// What a screen remembers in its address: named texts behind the question mark. Changing one replaces
// the entry in the history unless it is asked to be a step of its own.
import { useCallback, useMemo } from 'react';
import { useLocation, useSearch } from 'wouter';
import { go } from './address.ts';

export type AddressQuery = readonly [
  URLSearchParams,
  (changes: Readonly<Record<string, string | null>>, options?: { readonly step?: boolean }) => void,
];

export function useAddressQuery(): AddressQuery {
  const search = useSearch();
  const [path] = useLocation();
  const params = useMemo(() => new URLSearchParams(search), [search]);
  const change = useCallback(
    (changes: Readonly<Record<string, string | null>>, options: { readonly step?: boolean } = {}) => {
      const next = new URLSearchParams(search);
      for (const [name, value] of Object.entries(changes)) {
        if (value === null) next.delete(name);
        else next.set(name, value);
      }
      const text = next.toString();
      go(text === '' ? path : `${path}?${text}`, { replace: options.step !== true });
    },
    [search, path],
  );
  return [params, change];
}
