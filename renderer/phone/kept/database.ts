// The phone's own store. A change is on the phone before it is shown: what is asked for is one transaction, which is
// over only when the phone has written it down.
const name = 'regang-count';
const version = 1;

export type StoreName = 'papers' | 'drafts' | 'batches' | 'facts';
export const storeNames: readonly StoreName[] = ['papers', 'drafts', 'batches', 'facts'];

let opening: Promise<IDBDatabase> | null = null;

function database(): Promise<IDBDatabase> {
  opening ??= new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open(name, version);
    request.addEventListener('upgradeneeded', () => {
      request.result.createObjectStore('papers', { keyPath: 'key' });
      request.result.createObjectStore('drafts', { keyPath: 'paper.key' });
      request.result.createObjectStore('batches', { keyPath: 'id' });
      request.result.createObjectStore('facts');
    });
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(request.error ?? new Error('It cannot be opened.')));
  });
  return opening;
}

/** Nothing else may be waited for inside `work`: a transaction ends by itself when it is not asked anything. */
export async function transact<T>(
  stores: readonly StoreName[],
  mode: 'readonly' | 'readwrite',
  work: (store: (name: StoreName) => IDBObjectStore) => Promise<T>,
): Promise<T> {
  const open = await database();
  const transaction = open.transaction([...stores], mode, { durability: 'strict' });
  const over = new Promise<void>((resolve, reject) => {
    const failed = (): void => reject(transaction.error ?? new Error('The phone did not keep it.'));
    transaction.addEventListener('complete', () => resolve());
    transaction.addEventListener('abort', failed);
    transaction.addEventListener('error', failed);
  });
  try {
    const value = await work((store) => transaction.objectStore(store));
    await over;
    return value;
  } catch (error) {
    over.catch(() => undefined);
    if (transaction.error === null) abort(transaction);
    throw error;
  }
}

function abort(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // It is over already.
  }
}

export function asked<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(request.error ?? new Error('The phone did not answer.')));
  });
}
