// Whether this page can be opened without a connection: only where the browser lets a worker keep its files, which it
// does on https addresses and on the machine itself.
export const canOpenOffline = 'serviceWorker' in navigator;

export function openOffline(): void {
  if (!canOpenOffline) return;
  navigator.serviceWorker.register('./worker.js').catch(() => undefined);
  // So that the phone does not clear what is kept when it is short of space; it may say no.
  navigator.storage.persist().catch(() => undefined);
}
