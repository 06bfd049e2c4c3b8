// What is wrong with an imported file, cell by cell: people mend a file when they know the line, the
// column, what was read there and what was wanted instead.

export interface BadCell {
  /** The physical line of the file, the heading being line 1; where a row spans lines, its first. */
  readonly line: number;
  readonly column: string;
  readonly read: string;
  readonly wanted: string;
}

/** A cell is shown as it stood, but a whole file pasted into one cell is not shown whole. */
export function shownCell(text: string): string {
  return text.length > 120 ? `${text.slice(0, 117)}...` : text;
}
