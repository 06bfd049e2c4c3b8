// The table of every screen: sorts, filters, hides and resizes columns, totals what is shown, copies to
// spreadsheets, and draws only the rows in view where there are many. Keys: arrows, Home, End move
// from row to row, Enter opens, Ctrl+C copies.
import { useTable } from '@tanstack/react-table';
import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { TableBody } from './table-body.tsx';
import { type Column, cellText, features, toColumnDefs } from './table-columns.ts';
import { TableHead } from './table-head.tsx';
import { ColumnChoice } from './table-choice.tsx';
import { useWholeWords } from './whole-words.ts';
export type { Column } from './table-columns.ts';

export interface DataTableProps<Row extends object> {
  /** What a screen reader announces; not shown. */
  readonly caption: string;
  /** The same array between renders: a constant of the module or a memo. */
  readonly columns: readonly Column<Row>[];
  /** The same array between renders. */
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  readonly selectedKey?: string | null;
  readonly onSelect?: (row: Row) => void;
  /** Column id to sort by at first; a leading - for descending. */
  readonly sortBy?: string;
  /** Shown in place of rows where there are none. */
  readonly empty?: ReactNode;
  /** A field over the table that filters its rows; its label. */
  readonly filterLabel?: string;
  /** Beside the filter field. */
  readonly tools?: ReactNode;
  /** Extra class of a row, for a state that words in the row tell as well. */
  readonly rowClass?: (row: Row) => string | undefined;
}

export function DataTable<Row extends object>(props: DataTableProps<Row>): ReactNode {
  const { columns, rows, rowKey } = props;
  const byId = useMemo(() => new Map(columns.map((column) => [column.id, column])), [columns]);
  const columnDefs = useMemo(() => toColumnDefs(columns), [columns]);
  const [filter, setFilter] = useState('');
  const data = useFiltered(columns, rows, filter);
  const table = useTable({
    features,
    columns: columnDefs,
    data,
    getRowId: rowKey,
    columnResizeMode: 'onChange',
    enableSortingRemoval: false,
    initialState: {
      sorting: props.sortBy === undefined ? [] : [sortState(props.sortBy)],
      columnVisibility: Object.fromEntries(
        columns.filter((column) => column.hidden === true).map((column) => [column.id, false]),
      ),
    },
  });
  const scroller = useRef<HTMLDivElement>(null);
  useWholeWords(scroller);
  const shown = table.getRowModel().rows;
  const filtered = data.length !== rows.length;
  const visible = table.getVisibleLeafColumns().flatMap((column) => byId.get(column.id) ?? []);

  return (
    <div className="data-table">
      {props.filterLabel === undefined && props.tools === undefined ? null : (
        <div className="table-tools">
          {props.filterLabel === undefined ? null : (
            <label className="table-filter">
              <span>{props.filterLabel}</span>
              <input type="search" value={filter} onChange={(event) => setFilter(event.target.value)} />
            </label>
          )}
          {props.tools}
          <ColumnChoice table={table} />
          <output className="table-count">
            {filtered ? `${shown.length} of ${rows.length}` : `${rows.length}`}{' '}
            {rows.length === 1 ? 'row' : 'rows'}
          </output>
        </div>
      )}
      <div className="table-scroll" ref={scroller}>
        <table
          aria-label={props.caption}
          aria-rowcount={shown.length + 1}
          style={{ width: table.getTotalSize(), minWidth: '100%' }}
          role={props.onSelect === undefined ? 'table' : 'grid'}
        >
          <TableHead table={table} byId={byId} />
          <TableBody
            rows={shown}
            columns={visible}
            scroller={scroller}
            selectedKey={props.selectedKey ?? null}
            onSelect={props.onSelect}
            rowClass={props.rowClass}
            empty={
              filtered && data.length === 0 ? 'No row has these words.' : (props.empty ?? 'Nothing here yet.')
            }
          />
          {visible.some((column) => column.total !== undefined) && shown.length > 0 ? (
            <tfoot>
              <tr>
                {visible.map((column) => (
                  <td key={column.id} className={column.numeric === true ? 'numeric' : undefined}>
                    {column.total?.(shown.map((row) => row.original))}
                  </td>
                ))}
              </tr>
            </tfoot>
          ) : null}
        </table>
      </div>
    </div>
  );
}

function sortState(sortBy: string): { id: string; desc: boolean } {
  return sortBy.startsWith('-') ? { id: sortBy.slice(1), desc: true } : { id: sortBy, desc: false };
}

/** Every word typed must stand somewhere in the row, in any column. */
function useFiltered<Row>(
  columns: readonly Column<Row>[],
  rows: readonly Row[],
  filter: string,
): readonly Row[] {
  const [settled, setSettled] = useState(filter);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(filter), rows.length > 2000 ? 120 : 0);
    return () => clearTimeout(timer);
  }, [filter, rows.length]);
  return useMemo(() => {
    const words = settled.toLowerCase().split(/\s+/u).filter(Boolean);
    if (words.length === 0) return rows;
    return rows.filter((row) => {
      const text = columns
        .map((column) => cellText(column, row))
        .join(' ')
        .toLowerCase();
      return words.every((word) => text.includes(word));
    });
  }, [columns, rows, settled]);
}
