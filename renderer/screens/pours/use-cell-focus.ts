// Which cell of the table has the focus, whether it is being edited, and what the keys do about it.
import { type KeyboardEvent, type RefObject, useCallback, useState } from 'react';
import { movedCell } from './cell-moves.ts';
import { isCellId } from './pour-cells.ts';
import { columnIds, columnText } from './pour-columns.ts';
import type { CellContext, PourRow } from './pour-shapes.ts';
import type { PourEdits } from './use-pour-edits.ts';

export interface CellFocus {
  readonly column: string;
  /** Text with which editing began, '' for the text that stands there; null where it is not edited. */
  readonly editing: string | null;
  /** Set when a key moved it, so that the page follows; a click has focused the cell already. */
  readonly wanted: boolean;
}

export type EditEnd = (text: string | null, next: 'stay' | 'right' | 'left') => void;

interface Around {
  readonly rows: readonly PourRow[];
  /** Index of the chosen row. */
  readonly at: number;
  readonly context: CellContext;
  readonly edits: PourEdits;
  readonly onChoose: (code: string) => void;
}

const rowHeightPx = 27;

export function useCellFocus(
  { rows, at, context, edits, onChoose }: Around,
  scroller: RefObject<HTMLElement | null>,
): {
  readonly focus: CellFocus;
  readonly focusCell: (index: number, column: string) => void;
  readonly edit: (index: number, column: string) => void;
  readonly end: EditEnd;
  readonly pressed: (event: KeyboardEvent) => void;
} {
  const { write, drop } = edits;
  const [focus, setFocus] = useState<CellFocus>({ column: 'code', editing: null, wanted: false });
  const column = columnIds.indexOf(focus.column);

  const choose = useCallback(
    (index: number) => {
      const code = rows[index]?.pour.code;
      if (code !== undefined) onChoose(code);
    },
    [rows, onChoose],
  );
  const focusCell = useCallback(
    (index: number, id: string) => {
      setFocus((old) =>
        old.column === id && old.editing === null ? old : { column: id, editing: null, wanted: false },
      );
      choose(index);
    },
    [choose],
  );
  const edit = useCallback((_index: number, id: string) => {
    setFocus({ column: id, editing: '', wanted: false });
  }, []);
  const end = useCallback<EditEnd>(
    (text, next) => {
      const code = rows[at]?.pour.code;
      if (code !== undefined && isCellId(focus.column)) {
        if (text === null) drop(code, focus.column);
        else write(code, focus.column, text);
      }
      const to = column + (next === 'right' ? 1 : next === 'left' ? -1 : 0);
      setFocus({ column: columnIds[to] ?? focus.column, editing: null, wanted: true });
    },
    [rows, at, focus.column, column, write, drop],
  );
  const pressed = (event: KeyboardEvent): void => {
    const row = rows[at];
    if (event.altKey || row === undefined) return;
    const control = event.ctrlKey || event.metaKey;
    const page = Math.max(1, Math.floor((scroller.current?.clientHeight ?? 0) / rowHeightPx) - 2);
    const size = { rows: rows.length, columns: columnIds.length };
    const to = movedCell({ row: at, column }, event.key, size, { control, page });
    if (to !== undefined) {
      setFocus({ column: columnIds[to.column] ?? 'code', editing: null, wanted: true });
      choose(to.row);
    } else if (control && event.key.toLowerCase() === 'c') {
      if (getSelection()?.isCollapsed === false) return;
      void navigator.clipboard.writeText(columnText(row, focus.column, context));
    } else if (control) return;
    else if (event.key === 'Escape') drop(row.pour.code, focus.column);
    else if (!isCellId(focus.column)) return;
    else if (event.key === 'Enter' || event.key === 'F2') edit(at, focus.column);
    else if (event.key.length === 1 && event.key !== ' ') setFocus((old) => ({ ...old, editing: event.key }));
    else return;
    event.preventDefault();
  };
  return { focus, focusCell, edit, end, pressed };
}
