// Column heads: a button that sorts, and an edge that resizes by pointer or by the arrow keys.
import type { Table } from '@tanstack/react-table';
import type { KeyboardEvent, ReactNode } from 'react';
import type { Column, features } from './table-columns.ts';

export function TableHead<Row extends object>(props: {
  readonly table: Table<typeof features, Row>;
  readonly byId: ReadonlyMap<string, Column<Row>>;
}): ReactNode {
  return (
    <thead>
      {props.table.getHeaderGroups().map((group) => (
        <tr key={group.id} aria-rowindex={1}>
          {group.headers.map((header) => {
            const column = props.byId.get(header.column.id);
            const sorted = header.column.getIsSorted();
            const name = column?.header ?? header.column.id;
            const widen = (event: KeyboardEvent): void => {
              const by = event.key === 'ArrowRight' ? 16 : event.key === 'ArrowLeft' ? -16 : 0;
              if (by === 0) return;
              event.preventDefault();
              event.stopPropagation();
              const width = Math.max(48, header.getSize() + by);
              props.table.setColumnSizing((old) => ({ ...old, [header.column.id]: width }));
            };
            return (
              <th
                key={header.id}
                scope="col"
                style={{ width: header.getSize() }}
                className={column?.numeric === true ? 'numeric' : undefined}
                aria-sort={sorted === 'asc' ? 'ascending' : sorted === 'desc' ? 'descending' : undefined}
              >
                <button
                  type="button"
                  className="sort"
                  title="Shift and the left and right arrow keys change the width"
                  onClick={header.column.getToggleSortingHandler()}
                  onKeyDown={(event) => {
                    if (event.shiftKey) widen(event);
                  }}
                >
                  {name}
                  <span className="sort-mark" aria-hidden="true">
                    {sorted === 'asc' ? ' ↑' : sorted === 'desc' ? ' ↓' : ''}
                  </span>
                </button>
                <button
                  type="button"
                  className="resize"
                  aria-label={`Width of ${name}`}
                  tabIndex={-1}
                  onMouseDown={header.getResizeHandler()}
                  onTouchStart={header.getResizeHandler()}
                />
              </th>
            );
          })}
        </tr>
      ))}
    </thead>
  );
}
