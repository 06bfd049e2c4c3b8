// Which cell of a table has the focus, whether it is being written, and what the keys do about it.
import { type KeyboardEvent, type RefObject, useState } from 'react';
import { type CellPlace, movedCell } from '../pours/cell-moves.ts';
import type { EditEnd } from './grid-editor.tsx';
import type { GridRow } from './grid-shapes.ts';

interface GridFocus extends CellPlace {
  /** Text with which editing began, '' for the text that stands there; null where it is not edited. */
  readonly editing: string | null;
  /** Set when a key moved it, so that the page follows; a click has focused the cell already. */
  readonly wanted: boolean;
}

export interface GridActs {
  /** Null gives up what was typed. */
  readonly onWrite: (row: GridRow, column: number, text: string | null) => void;
  readonly onRemove?: ((row: GridRow) => void) | undefined;
}

const rowHeightPx = 27;

export function useGridKeys(
  rows: readonly GridRow[],
  columns: number,
  acts: GridActs,
  scroller: RefObject<HTMLElement | null>,
): {
  readonly focus: GridFocus;
  readonly focusCell: (row: number, column: number) => void;
  readonly edit: (row: number, column: number) => void;
  readonly end: EditEnd;
  readonly pressed: (event: KeyboardEvent) => void;
} {
  const [state, setFocus] = useState<GridFocus>({ row: 0, column: 0, editing: null, wanted: false });
  const focus = {
    ...state,
    row: Math.max(0, Math.min(state.row, rows.length - 1)),
    column: Math.min(state.column, columns - 1),
  };
  const row = rows[focus.row];
  const cell = row?.cells[focus.column];

  const focusCell = (at: number, column: number): void =>
    setFocus((old) =>
      old.row === at && old.column === column && old.editing === null
        ? old
        : { row: at, column, editing: null, wanted: false },
    );
  const edit = (at: number, column: number): void => {
    const kind = rows[at]?.cells[column]?.kind ?? null;
    if (kind !== null) setFocus({ row: at, column, editing: '', wanted: false });
  };
  const end: EditEnd = (text, next) => {
    if (row !== undefined && text !== null && text !== cell?.text) acts.onWrite(row, focus.column, text);
    const to = nextWritable(row, focus.column, next);
    setFocus({ row: focus.row, column: to, editing: null, wanted: true });
  };
  const pressed = (event: KeyboardEvent): void => {
    if (event.altKey || row === undefined || cell === undefined || focus.editing !== null) return;
    const control = event.ctrlKey || event.metaKey;
    const page = Math.max(1, Math.floor((scroller.current?.clientHeight ?? 0) / rowHeightPx) - 2);
    const to = movedCell(focus, event.key, { rows: rows.length, columns }, { control, page });
    if (to !== undefined) setFocus({ ...to, editing: null, wanted: true });
    else if (control && event.key.toLowerCase() === 'c') {
      if (getSelection()?.isCollapsed === false) return;
      void navigator.clipboard.writeText(cell.text);
    } else if (control && event.key === 'Delete' && row.canGo === true) acts.onRemove?.(row);
    else if (control) return;
    else if (cell.kind === null) return;
    else if (event.key === 'Escape') {
      if (cell.problem === undefined) return;
      acts.onWrite(row, focus.column, null);
    } else if (event.key === 'Delete') acts.onWrite(row, focus.column, '');
    else if (event.key === 'Enter' || event.key === 'F2') edit(focus.row, focus.column);
    else if (event.key.length === 1 && event.key !== ' ')
      setFocus({ ...focus, editing: event.key, wanted: false });
    else return;
    event.preventDefault();
  };
  return { focus, focusCell, edit, end, pressed };
}

/** Tab goes over cells in which nothing can be written, and stays where there is none after it. */
function nextWritable(row: GridRow | undefined, column: number, next: 'stay' | 'right' | 'left'): number {
  if (row === undefined || next === 'stay') return column;
  const by = next === 'right' ? 1 : -1;
  for (let at = column + by; at >= 0 && at < row.cells.length; at += by)
    if (row.cells[at]?.kind !== null) return at;
  return column;
}
