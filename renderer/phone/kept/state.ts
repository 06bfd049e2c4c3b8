// What is kept, as the screens see it: read out of the phone's store after each change, here or in another tab.
import { useSyncExternalStore } from 'react';
import { asked, storeNames, transact, type StoreName } from './database.ts';
import type { Batch, Draft, KeptPaper, Work } from './kept.ts';

export interface Kept {
  readonly papers: readonly KeptPaper[];
  readonly drafts: readonly Draft[];
  readonly batches: readonly Batch[];
  readonly work: Work | null;
  /** The name that was entered last. */
  readonly name: string | null;
}

let kept: Kept = { papers: [], drafts: [], batches: [], work: null, name: null };
const listeners = new Set<() => void>();
const channel = new BroadcastChannel('regang-count');

channel.addEventListener('message', (event: MessageEvent<readonly StoreName[]>) => void renew(event.data));

export function keptNow(): Kept {
  return kept;
}

export function useKept(): Kept {
  return useSyncExternalStore(subscribe, keptNow);
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Changes what is kept in one transaction, then shows it here and in other tabs. */
export async function keep<T>(
  stores: readonly StoreName[],
  work: (store: (name: StoreName) => IDBObjectStore) => Promise<T>,
): Promise<T> {
  const value = await transact(stores, 'readwrite', work);
  await renew(stores);
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a channel has no origin
  channel.postMessage(stores);
  return value;
}

export async function renew(stores: readonly StoreName[] = storeNames): Promise<void> {
  const read: Partial<Record<keyof Kept, unknown>> = {};
  await transact(stores, 'readonly', async (store) => {
    for (const name of stores) {
      if (name === 'facts') {
        read.work = (await asked(store('facts').get('work'))) ?? null;
        read.name = (await asked(store('facts').get('name'))) ?? null;
      } else read[name] = await asked(store(name).getAll());
    }
  });
  kept = { ...kept, ...(read as Partial<Kept>) };
  for (const listener of listeners) listener();
}
