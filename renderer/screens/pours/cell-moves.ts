// Which cell a key goes to in a table of rows and columns.
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

/** The place after the key, inside the table, or undefined where the key does not move. */
export function movedCell(
  at: CellPlace,
  key: string,
  size: { readonly rows: number; readonly columns: number },
  more: { readonly control: boolean; readonly page: number },
): CellPlace | undefined {
  const [lastRow, lastColumn] = [size.rows - 1, size.columns - 1];
  switch (key) {
    case 'ArrowLeft':
      return { ...at, column: Math.max(0, at.column - 1) };
    case 'ArrowRight':
      return { ...at, column: Math.min(lastColumn, at.column + 1) };
    case 'ArrowUp':
      return { ...at, row: Math.max(0, at.row - 1) };
    case 'ArrowDown':
      return { ...at, row: Math.min(lastRow, at.row + 1) };
    case 'Home':
      return { row: more.control ? 0 : at.row, column: 0 };
    case 'End':
      return { row: more.control ? lastRow : at.row, column: lastColumn };
    case 'PageUp':
      return { ...at, row: Math.max(0, at.row - more.page) };
    case 'PageDown':
      return { ...at, row: Math.min(lastRow, at.row + more.page) };
    default:
      return undefined;
  }
}
