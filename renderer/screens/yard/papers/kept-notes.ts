// Notes being written, kept while the window is open: another screen loses nothing that was typed, nor the words of a
// refusal that sent somebody back to the note.
import { useCallback, useState } from 'react';
import type { NoteDraft } from './note-draft.ts';

const kept = new Map<string, NoteDraft>();
const refusals = new Map<string, unknown>();

export interface KeptNote {
  /** As typed; null while nothing was typed since it was read. */
  readonly typed: NoteDraft | null;
  readonly set: (draft: NoteDraft) => void;
  readonly clear: () => void;
}

/** @param key the note, or for a new one its kind */
export function useKeptNote(key: string): KeptNote {
  const [typed, setTyped] = useState<NoteDraft | null>(() => kept.get(key) ?? null);
  const set = useCallback(
    (draft: NoteDraft) => {
      kept.set(key, draft);
      setTyped(draft);
    },
    [key],
  );
  const clear = useCallback(() => {
    kept.delete(key);
    setTyped(null);
  }, [key]);
  return { typed, set, clear };
}

/** For the screen of the note that comes next. */
export function keepRefusal(note: string, error: unknown): void {
  refusals.set(note, error);
}

export function takeRefusal(note: string): unknown {
  const error = refusals.get(note) ?? null;
  refusals.delete(note);
  return error;
}
