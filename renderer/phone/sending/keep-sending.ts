// When to try to send: by itself every few seconds while the page is looked at, and whenever the connection or the
// page comes back.
import { sendAll } from './sender.ts';

const everyMs = 4000;

export function keepSending(): void {
  setInterval(() => {
    if (document.visibilityState === 'visible') tryNow();
  }, everyMs);
  addEventListener('online', tryNow);
  addEventListener('pageshow', tryNow);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') tryNow();
  });
  tryNow();
}

function tryNow(): void {
  void sendAll(false);
}
