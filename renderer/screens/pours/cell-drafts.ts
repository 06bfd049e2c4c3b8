// Texts of cells that are not in the book: on their way, or refused with the reason.
import { useCallback, useState } from 'react';

export interface CellDraft {
  readonly text: string;
  /** Null while it is being saved. */
  readonly message: string | null;
  readonly hint?: string;
}

export type CellDrafts = ReadonlyMap<string, CellDraft>;

export function draftKey(code: string, cell: string): string {
  return `${code} ${cell}`;
}

/** Drafts by cell; null takes one away and shows again what stands in the book. */
export function useCellDrafts(): [CellDrafts, (code: string, cell: string, draft: CellDraft | null) => void] {
  const [drafts, setDrafts] = useState<CellDrafts>(new Map());
  const setDraft = useCallback((code: string, cell: string, draft: CellDraft | null) => {
    setDrafts((old) => {
      const next = new Map(old);
      if (draft === null) next.delete(draftKey(code, cell));
      else next.set(draftKey(code, cell), draft);
      return next;
    });
  }, []);
  return [drafts, setDraft];
}
