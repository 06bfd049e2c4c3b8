// The table of pours. Arrows move from cell to cell, Enter, F2 or a letter begins to edit, Tab takes the text
// and goes on, Ctrl+C copies the cell, Ctrl+V lays cells of a spreadsheet over the table from here on.
import {
  type ClipboardEvent,
  type KeyboardEvent,
  type ReactNode,
  useCallback,
  useRef,
  useState,
} from 'react';
import { movedCell } from './cell-moves.ts';
import { pastedGrid, pasteOver } from './pasted-cells.ts';
import { isCellId } from './pour-cells.ts';
import { columnIds, columnText, pourColumns } from './pour-columns.ts';
import { PourTableRow } from './pour-row.tsx';
import type { CellContext, PourRow } from './pour-shapes.ts';
import type { PourEdits } from './use-pour-edits.ts';

const tableWidthPx = pourColumns.reduce((sum, column) => sum + column.widthPx, 0);

interface Focus {
  readonly index: number;
  readonly column: string;
  readonly editing: string | null;
  /** Set when a key moved it, so that the page follows; a click has focused the cell already. */
  readonly wanted: boolean;
}

export function PourGrid(props: {
  readonly rows: readonly PourRow[];
  readonly context: CellContext;
  readonly chosen: string | null;
  readonly edits: PourEdits;
  readonly onChoose: (code: string) => void;
  readonly onSay: (words: string) => void;
}): ReactNode {
  const { rows, context, edits, onChoose } = props;
  const { write, drop } = edits;
  const at = Math.max(
    0,
    rows.findIndex((row) => row.pour.code === props.chosen),
  );
  const [focus, setFocus] = useState<Omit<Focus, 'index'>>({ column: 'code', editing: null, wanted: false });
  const scroller = useRef<HTMLDivElement>(null);
  const column = columnIds.indexOf(focus.column);

  const focusCell = useCallback(
    (index: number, id: string) => {
      setFocus((old) =>
        old.column === id && old.editing === null ? old : { column: id, editing: null, wanted: false },
      );
      const code = rows[index]?.pour.code;
      if (code !== undefined) onChoose(code);
    },
    [rows, onChoose],
  );
  const edit = useCallback((_index: number, id: string) => {
    setFocus({ column: id, editing: '', wanted: false });
  }, []);
  const moveTo = (row: number, to: number): void => {
    setFocus({ column: columnIds[to] ?? 'code', editing: null, wanted: true });
    const code = rows[row]?.pour.code;
    if (code !== undefined) onChoose(code);
  };
  const end = useCallback(
    (text: string | null, next: 'stay' | 'right' | 'left') => {
      const row = rows[at];
      if (row !== undefined && isCellId(focus.column)) {
        if (text === null) drop(row.pour.code, focus.column);
        else write(row.pour, focus.column, text);
      }
      const step = next === 'right' ? 1 : next === 'left' ? -1 : 0;
      const to = Math.max(0, Math.min(columnIds.length - 1, column + step));
      setFocus({ column: columnIds[to] ?? focus.column, editing: null, wanted: true });
    },
    [rows, at, focus.column, column, write, drop],
  );

  const pressed = (event: KeyboardEvent): void => {
    const control = event.ctrlKey || event.metaKey;
    const row = rows[at];
    if (event.altKey || row === undefined) return;
    const page = Math.max(1, Math.floor((scroller.current?.clientHeight ?? 0) / 27) - 2);
    const to = movedCell(
      { row: at, column },
      event.key,
      { rows: rows.length, columns: columnIds.length },
      { control, page },
    );
    if (to !== undefined) moveTo(to.row, to.column);
    else if (control && event.key.toLowerCase() === 'c') {
      if (getSelection()?.isCollapsed === false) return;
      void navigator.clipboard.writeText(columnText(row, focus.column, context));
    } else if (control) return;
    else if ((event.key === 'Enter' || event.key === 'F2') && isCellId(focus.column)) edit(at, focus.column);
    else if (event.key === 'Escape') drop(row.pour.code, focus.column);
    else if (event.key.length === 1 && event.key !== ' ' && isCellId(focus.column))
      setFocus((old) => ({ ...old, editing: event.key }));
    else return;
    event.preventDefault();
  };

  const pasted = (event: ClipboardEvent): void => {
    if (focus.editing !== null) return;
    event.preventDefault();
    const grid = pastedGrid(event.clipboardData.getData('text/plain'));
    const under = rows.slice(at);
    const laid = pasteOver(
      under.map((row) => row.pour),
      columnIds.slice(column),
      grid,
      context,
    );
    void savePasted(laid.pours, under, edits).then((count) => props.onSay(pasteWords(count, laid)));
  };

  return (
    <div className="table-scroll pour-scroll" ref={scroller}>
      <table
        className="pour-table"
        style={{ width: tableWidthPx }}
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-to-interactive-role -- cells take keys
        role="grid"
        aria-label="Pours in their sequence"
        aria-rowcount={rows.length + 1}
        onKeyDown={pressed}
        onPaste={pasted}
      >
        <colgroup>
          {pourColumns.map((one) => (
            // What is over goes to the name.
            <col key={one.id} width={one.id === 'name' ? undefined : one.widthPx} />
          ))}
        </colgroup>
        <thead>
          <tr aria-rowindex={1}>
            {pourColumns.map((one) => (
              <th
                key={one.id}
                scope="col"
                title={one.words}
                className={one.numeric === true ? 'numeric' : undefined}
              >
                {one.header}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <PourTableRow
              key={row.pour.code}
              row={row}
              index={index}
              context={context}
              chosen={row.pour.code === props.chosen}
              focused={index === at ? focus.column : null}
              editing={index === at ? focus.editing : null}
              wantsFocus={focus.wanted}
              drafts={edits.drafts}
              onFocus={focusCell}
              onEdit={edit}
              onEnd={index === at ? end : nothing}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function nothing(): void {
  // Rows without the focused cell never end an edit.
}

/** One pour after another, as each is a command of its own; answers how many cells were saved. */
async function savePasted(
  pours: ReturnType<typeof pasteOver>['pours'],
  rows: readonly PourRow[],
  edits: PourEdits,
): Promise<number> {
  let count = 0;
  for (const pasted of pours) {
    const before = rows.find((row) => row.pour.code === pasted.pour.code)?.pour;
    if (before === undefined) continue;
    // oxlint-disable-next-line no-await-in-loop -- commands go one after another
    count += await edits.savePasted(before, pasted);
  }
  return count;
}

function pasteWords(saved: number, laid: ReturnType<typeof pasteOver>): string {
  const meant = laid.pours.reduce((sum, pour) => sum + pour.refused.length + pour.changed.length, 0);
  const marked = meant === saved ? '' : ` ${meant - saved} are refused and stand marked in their cells.`;
  const left =
    laid.cellsLeft === 0 ? '' : ` ${laid.cellsLeft} lay over columns that follow from others: left out.`;
  const rows = laid.rowsLeft === 0 ? '' : ` ${laid.rowsLeft} rows more than there are pours: left out.`;
  return `${saved} pasted cells saved.${marked}${left}${rows}`;
}
