// Whether the page is being put on paper, and since when. Everything that measures the window or draws only
// what is in view asks: paper has one width and shows everything.
import { useSyncExternalStore } from 'react';
import { flushSync } from 'react-dom';

/** Pixels across a printed page, the same as in style/print.css; the browser scales it to the paper. */
export const paperWidthPx = 1200;

const listeners = new Set<() => void>();
let printedAt: string | null = null;

/** When the print that is under way began, ISO 8601; null while there is none. */
export function usePrintedAt(): string | null {
  return useSyncExternalStore(subscribe, () => printedAt);
}

export function useIsPrinting(): boolean {
  return usePrintedAt() !== null;
}

/** Called once, before anything is drawn. */
export function watchPrinting(): void {
  addEventListener('beforeprint', begin);
  addEventListener('afterprint', end);
  // A print that is only looked at on screen has no such events.
  matchMedia('print').addEventListener('change', (event) => (event.matches ? begin() : end()));
}

/** What lies over the sheet is gone first: it would lie over the paper as well. */
export function printScreen(): void {
  setTimeout(() => window.print(), 200);
}

function begin(): void {
  if (printedAt === null) set(new Date().toISOString());
}

function end(): void {
  // The two signs end one after the other; the paper is there until the last.
  if (!matchMedia('print').matches) set(null);
}

function set(value: string | null): void {
  printedAt = value;
  // The browser lays the paper out as soon as its event returns: by then all must be drawn.
  flushSync(() => {
    for (const listener of listeners) listener();
  });
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
