// Whether the door was reached when it was last asked.
import { useSyncExternalStore } from 'react';

export type Connection = 'unknown' | 'there' | 'none' | 'signed-out';

let connection: Connection = 'unknown';
const listeners = new Set<() => void>();

export function setConnection(now: Connection): void {
  if (now === connection) return;
  connection = now;
  for (const listener of listeners) listener();
}

export function useConnection(): Connection {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => connection,
  );
}
