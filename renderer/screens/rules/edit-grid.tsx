// A table of cells that are written in place. Arrows move from cell to cell; Enter, F2, a letter or a second
// click begins to write; Tab takes the text and goes on; Escape gives a refused text up; Delete empties a cell,
// Ctrl+Delete takes the row out; Ctrl+C copies a cell, Ctrl+V lays cells of a spreadsheet over the table.
import { type ReactNode, useEffect, useId, useRef } from 'react';
import { pastedGrid } from '../pours/pasted-cells.ts';
import { type EditEnd, GridEditor } from './grid-editor.tsx';
import type { GridCell, GridColumn, GridRow } from './grid-shapes.ts';
import { type GridActs, useGridKeys } from './use-grid-keys.ts';

export function EditGrid(
  props: GridActs & {
    readonly label: string;
    readonly columns: readonly GridColumn[];
    readonly rows: readonly GridRow[];
    readonly onPaste?: (at: { row: number; column: number }, grid: readonly (readonly string[])[]) => void;
    /** Wide tables are scrolled by themselves and tell what is wrong only where the focus is. */
    readonly wide?: boolean;
  },
): ReactNode {
  const { columns, rows, onPaste, onRemove } = props;
  const scroller = useRef<HTMLDivElement>(null);
  const { focus, focusCell, edit, end, pressed } = useGridKeys(rows, columns.length, props, scroller);
  return (
    <div className={props.wide === true ? 'edit-grid wide' : 'edit-grid'} ref={scroller}>
      <table
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-to-interactive-role -- cells take keys
        role="grid"
        aria-label={props.label}
        onKeyDown={pressed}
        onPaste={(event) => {
          if (focus.editing !== null || onPaste === undefined) return;
          event.preventDefault();
          onPaste(focus, pastedGrid(event.clipboardData.getData('text/plain')));
        }}
      >
        <colgroup>
          {columns.map(({ id, width }) => (
            <col key={id} width={width} />
          ))}
          {onRemove === undefined ? null : <col width={34} />}
        </colgroup>
        <thead>
          <tr>
            {columns.map(({ id, header, unit, numeric }) => (
              <th key={id} scope="col" className={numeric === true ? 'numeric' : undefined}>
                {header}
                {unit === undefined ? null : <span className="grid-unit off-paper"> {unit}</span>}
              </th>
            ))}
            {onRemove === undefined ? null : (
              <th className="off-paper" scope="col">
                <span className="visually-hidden">Take out</span>
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, rowIndex) => (
            <tr key={row.key}>
              {row.cells.map((cell, index) => (
                <Cell
                  key={columns[index]?.id}
                  cell={cell}
                  label={`${row.label}, ${columns[index]?.header ?? ''}`}
                  numeric={columns[index]?.numeric === true}
                  focused={rowIndex === focus.row && index === focus.column}
                  editing={rowIndex === focus.row && index === focus.column ? focus.editing : null}
                  wantsFocus={focus.wanted}
                  onFocus={() => focusCell(rowIndex, index)}
                  onEdit={() => edit(rowIndex, index)}
                  onEnd={end}
                />
              ))}
              {onRemove === undefined ? null : (
                <td className="row-out off-paper">
                  {row.canGo === true ? (
                    <button
                      type="button"
                      className="quiet"
                      tabIndex={-1}
                      aria-label={`Take out ${row.label}`}
                      title="Take out (Ctrl+Delete)"
                      onClick={() => onRemove(row)}
                    >
                      ✕
                    </button>
                  ) : null}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Cell(props: {
  readonly cell: GridCell;
  readonly label: string;
  readonly numeric: boolean;
  readonly focused: boolean;
  readonly editing: string | null;
  readonly wantsFocus: boolean;
  readonly onFocus: () => void;
  readonly onEdit: () => void;
  readonly onEnd: EditEnd;
}): ReactNode {
  const { cell, focused, editing } = props;
  const { problem, before } = cell;
  const ref = useRef<HTMLTableCellElement>(null);
  const whyId = useId();
  /** A click on the cell that has the focus already begins to write. */
  const had = useRef(false);
  useEffect(() => {
    if (!focused || !props.wantsFocus || editing !== null) return;
    const active = document.activeElement;
    if (active === document.body || ref.current?.closest('table')?.contains(active) === true)
      ref.current?.focus();
  }, [focused, props.wantsFocus, editing]);
  const classes = [
    props.numeric ? 'numeric' : undefined,
    cell.kind === null ? 'told' : 'writable',
    problem === undefined ? undefined : 'refused',
    before === undefined ? undefined : 'changed',
  ];
  return (
    <td
      ref={ref}
      className={classes.filter(Boolean).join(' ')}
      // While it is written in, its field is what the keys and the pointer find.
      tabIndex={editing === null ? (focused ? 0 : -1) : undefined}
      aria-readonly={cell.kind === null}
      aria-invalid={problem === undefined ? undefined : true}
      aria-describedby={problem === undefined ? undefined : whyId}
      title={before === undefined ? undefined : `in the book: ${before === '' ? 'nothing' : before}`}
      onPointerDown={() => {
        had.current = document.activeElement === ref.current;
      }}
      onFocus={(event) => {
        if (event.target === ref.current) props.onFocus();
      }}
      onClick={() => {
        if (had.current && editing === null) props.onEdit();
      }}
    >
      {focused && editing !== null ? (
        <GridEditor label={props.label} cell={cell} begin={editing} onEnd={props.onEnd} />
      ) : cell.text === '' ? (
        <span className="otherwise">{cell.otherwise}</span>
      ) : (
        cell.text
      )}
      {before === undefined ? null : <span className="visually-hidden"> (changed)</span>}
      {problem === undefined ? null : (
        <span id={whyId} className={focused ? 'why here' : 'why'} role="alert">
          {problem.message} {problem.hint}
        </span>
      )}
    </td>
  );
}
