// Cells of a spreadsheet laid over the table and saved, one pour after another; what came of it in words.
import { pastedGrid, pasteOver } from './pasted-cells.ts';
import { columnIds } from './pour-columns.ts';
import type { CellContext, PourRow } from './pour-shapes.ts';
import type { PourEdits } from './use-pour-edits.ts';

/**
 * @param rows the chosen row and those under it
 * @param column index of the column that the first pasted cell lies on
 */
export async function pastePours(
  text: string,
  rows: readonly PourRow[],
  column: number,
  context: CellContext,
  edits: PourEdits,
): Promise<string> {
  const laid = pasteOver(
    rows.map((row) => row.pour),
    columnIds.slice(column),
    pastedGrid(text),
    context,
  );
  let saved = 0;
  // oxlint-disable-next-line no-await-in-loop -- commands go one after another
  for (const pasted of laid.pours) saved += await edits.savePasted(pasted);
  const meant = laid.pours.reduce((sum, pour) => sum + pour.refused.length + pour.changed.length, 0);
  const marked = meant === saved ? '' : ` ${meant - saved} are refused and stand marked in their cells.`;
  const left =
    laid.cellsLeft === 0 ? '' : ` ${laid.cellsLeft} lay over columns that follow from others: left out.`;
  const below = laid.rowsLeft === 0 ? '' : ` ${laid.rowsLeft} rows more than there are pours: left out.`;
  return `${saved} pasted cells saved.${marked}${left}${below}`;
}
