// The slip being written, kept while the window is open: closing the pane or looking at another screen
// loses nothing that was typed.
import { useCallback, useState } from 'react';
import { type BookingDraft, lineIsEmpty } from './booking-draft.ts';

let kept: BookingDraft | null = null;

export function useKeptDraft(
  begin: () => BookingDraft,
): [BookingDraft, (change: (draft: BookingDraft) => BookingDraft) => void] {
  const [draft, setDraft] = useState(() =>
    // A slip whose lines are all empty begins anew, with what is chosen in the table now.
    kept === null || kept.lines.every(lineIsEmpty) ? begin() : kept,
  );
  const change = useCallback((by: (draft: BookingDraft) => BookingDraft) => {
    setDraft((old) => {
      kept = by(old);
      return kept;
    });
  }, []);
  return [draft, change];
}
