// What a screen says about a column, and how that becomes a column of the table library. Sort and filter
// functions are registered by name: without that, b10 would come before b9 and nobody would be told.
import {
  columnFilteringFeature,
  columnResizingFeature,
  columnSizingFeature,
  columnVisibilityFeature,
  createFilteredRowModel,
  createSortedRowModel,
  filterFn_includesString,
  globalFilteringFeature,
  rowSortingFeature,
  sortFn_alphanumeric,
  sortFn_basic,
  tableFeatures,
  type ColumnDef,
} from '@tanstack/react-table';
import type { ReactNode } from 'react';

export const features = tableFeatures({
  columnFilteringFeature,
  columnResizingFeature,
  columnSizingFeature,
  columnVisibilityFeature,
  globalFilteringFeature,
  rowSortingFeature,
  filteredRowModel: createFilteredRowModel(),
  sortedRowModel: createSortedRowModel(),
  sortFns: { alphanumeric: sortFn_alphanumeric, basic: sortFn_basic },
  filterFns: { includesString: filterFn_includesString },
});

export interface Column<Row> {
  readonly id: string;
  readonly header: string;
  /** What it sorts, filters and copies by. */
  readonly value: (row: Row) => string | number;
  /** What is shown, where that is not the value itself. */
  readonly show?: (row: Row) => ReactNode;
  /** What a filter reads and what is copied, where that is neither. */
  readonly text?: (row: Row) => string;
  /** Right-aligned and tabular. */
  readonly numeric?: boolean;
  /** Width in pixels to begin with; 140 unless told. */
  readonly width?: number;
  /** At the foot of the column, for the rows that are shown. */
  readonly total?: (rows: readonly Row[]) => ReactNode;
  /** Hidden until somebody chooses it. */
  readonly hidden?: boolean;
}

export function toColumnDefs<Row extends object>(
  columns: readonly Column<Row>[],
): ColumnDef<typeof features, Row>[] {
  return columns.map((column) => ({
    id: column.id,
    accessorFn: column.value,
    header: column.header,
    size: column.width ?? 140,
    minSize: 48,
    sortFn: column.numeric === true ? ('basic' as const) : ('alphanumeric' as const),
    sortDescFirst: false,
    enableGlobalFilter: true,
  }));
}

/** What a person sees of a cell, as text. */
export function cellText<Row>(column: Column<Row>, row: Row): string {
  return column.text?.(row) ?? String(column.value(row));
}

function clean(text: string): string {
  return text.replaceAll(/[\t\r\n]+/gu, ' ');
}

/** Rows as a spreadsheet takes them from the clipboard. */
export function toTabbed<Row>(columns: readonly Column<Row>[], rows: readonly Row[]): string {
  return [
    columns.map((column) => clean(column.header)).join('\t'),
    ...rows.map((row) => columns.map((column) => clean(cellText(column, row))).join('\t')),
  ].join('\n');
}
