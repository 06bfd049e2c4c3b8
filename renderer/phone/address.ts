// Where on the page a person is, behind the #, so that the phone's own way back works.
import { useSyncExternalStore } from 'react';

export function useAddress(): readonly string[] {
  const hash = useSyncExternalStore(
    (listener) => {
      addEventListener('hashchange', listener);
      return () => removeEventListener('hashchange', listener);
    },
    () => location.hash,
  );
  return hash
    .replace(/^#?\/?/u, '')
    .split('/')
    .filter((step) => step !== '')
    .map(decodeURIComponent);
}

export const addresses = {
  work: '#/',
  signIn: '#/sign-in',
  unsent: '#/unsent',
  paper: (key: string): string => `#/paper/${encodeURIComponent(key)}`,
} as const;
