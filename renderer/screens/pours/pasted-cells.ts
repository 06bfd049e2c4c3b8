// Cells pasted from a spreadsheet: tabs part cells, line ends part rows, a cell in quotes may hold both.
import { cells, type CellId, isCellId } from './pour-cells.ts';
import type { CellContext, Pour } from './pour-shapes.ts';
import type { Refusal } from '../../../core/answer.ts';

export function pastedGrid(text: string): string[][] {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  const endCell = (): void => {
    rows.at(-1)?.push(cell);
    cell = '';
  };
  for (let index = 0; index < text.length; index += 1) {
    const sign = text[index];
    if (quoted && sign === '"' && text[index + 1] === '"') {
      cell += '"';
      index += 1;
    } else if (
      sign === '"' &&
      (quoted || (cell === '' && text.indexOf('"', index + 1) > 0 && opensQuote(text, index)))
    )
      quoted = !quoted;
    else if (!quoted && sign === '\t') endCell();
    else if (!quoted && (sign === '\n' || sign === '\r')) {
      if (sign === '\r' && text[index + 1] === '\n') index += 1;
      endCell();
      rows.push([]);
    } else cell += sign;
  }
  if (cell !== '' || (rows.at(-1)?.length ?? 0) > 0) endCell();
  return rows.filter((row) => row.length > 0);
}

/** A quote opens a quoted cell only at the start of a cell. */
function opensQuote(text: string, index: number): boolean {
  const before = text[index - 1];
  return before === undefined || before === '\t' || before === '\n' || before === '\r';
}

export interface PastedPour {
  readonly pour: Pour;
  /** Cells whose text could not be read; the pour is then not saved. */
  readonly refused: readonly { readonly cell: CellId; readonly text: string; readonly refusal: Refusal }[];
  readonly changed: readonly CellId[];
}

export interface Pasted {
  readonly pours: readonly PastedPour[];
  /** Rows beyond the last of the table, and cells over columns that cannot be written in. */
  readonly rowsLeft: number;
  readonly cellsLeft: number;
}

/** Lays pasted cells over the table from a row and column on, each row on its pour. */
export function pasteOver(
  pours: readonly Pour[],
  columns: readonly string[],
  grid: readonly (readonly string[])[],
  context: CellContext,
): Pasted {
  let cellsLeft = 0;
  const results = grid.slice(0, pours.length).flatMap((row, index): PastedPour[] => {
    let pour = pours[index];
    if (pour === undefined) return [];
    const refused: PastedPour['refused'][number][] = [];
    const changed: CellId[] = [];
    row.forEach((text, offset) => {
      const column = columns[offset];
      if (pour === undefined || column === undefined || !isCellId(column)) {
        if (text.trim() !== '') cellsLeft += 1;
        return;
      }
      const cell = cells[column];
      if (text.trim() === cell.text(pour, context).trim()) return;
      const written = cell.write(pour, text, context);
      if (written.ok) {
        pour = written.value;
        changed.push(column);
      } else refused.push({ cell: column, text, refusal: written.error });
    });
    return refused.length + changed.length === 0 ? [] : [{ pour, refused, changed }];
  });
  return { pours: results, rowsLeft: Math.max(0, grid.length - pours.length), cellsLeft };
}
