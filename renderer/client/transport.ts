// The way a call reaches the core: by a message port on the desktop, by local requests in a browser.
// Both carry the same names, inputs and answers, so nothing above this file knows which door it is.
import type { Answer } from '../../core/answer.ts';

export interface Transport {
  readonly door: 'desktop' | 'local';
  readonly call: (name: string, input: unknown) => Promise<Answer<unknown>>;
  /** Calls back whenever the book was changed, by this page or by another. Answers how to stop. */
  readonly onChanged: (changed: () => void) => () => void;
}

/** What the desktop's preload puts on the window. */
interface DesktopBridge {
  readonly door: 'desktop';
  /** A native dialog: the chosen path, what went wrong, or null where it was cancelled. */
  readonly pick: (kind: PickKind) => Promise<string | { readonly error: string } | null>;
  /** What is on screen as a PDF, to a file that a native dialog asks for; null where nobody chose one. */
  readonly savePdf: () => Promise<{ readonly file: string } | { readonly error: string } | null>;
  readonly onMenu: (chosen: (command: string) => void) => unknown;
}

export type PickKind = 'open-book' | 'new-book' | 'copy-book';

declare global {
  interface Window {
    readonly regang?: DesktopBridge;
  }
}

export function chooseTransport(desktop: () => Transport, local: () => Transport): Transport {
  return window.regang?.door === 'desktop' ? desktop() : local();
}
