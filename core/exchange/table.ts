// The rows of an imported file under its heading, ready to be read cell by cell. Blank rows, repeated
// headings and totals are left out and counted; whatever is wrong is noted, and reading goes on.
import { type BadCell, shownCell } from './bad.ts';
import { type Column, findColumns, type FoundColumn, headingSign } from './columns.ts';
import { type CsvRow, readCsv } from './csv.ts';
import type { Read } from './cells.ts';

export interface Skipped {
  readonly blank: number;
  /** Lines of headings that were repeated, and of totals. */
  readonly headings: readonly number[];
  readonly totals: readonly number[];
}

export interface Row<Name extends string> {
  readonly line: number;
  /** Whether anything was refused in this row. */
  isBad(): boolean;
  /** The cell as it stands, '' where it is blank or the file has no such column. */
  text(column: Name): string;
  refuse(column: Name, wanted: string): void;
  /** The value of a cell that must not be blank; undefined once it was refused. */
  need<T>(column: Name, read: Read<T>): T | undefined;
  /** The value of a cell, null where it is blank; undefined once it was refused. */
  maybe<T>(column: Name, read: Read<T>): T | null | undefined;
}

export interface Table<Name extends string> {
  readonly rows: readonly Row<Name>[];
  readonly skipped: Skipped;
  /** Grows while the rows are read. */
  readonly bad: BadCell[];
}

const totalWords = /^(?:grand\s+total|sub-?\s?total|total|sum)s?\s*:?$/iu;

export function readTable<Name extends string>(
  text: string,
  columns: readonly Column<Name>[],
  names: Readonly<Record<string, string>> = {},
): Table<Name> {
  const csv = readCsv(text);
  const skipped = { blank: 0, headings: [] as number[], totals: [] as number[] };
  if ('bad' in csv) return { rows: [], skipped, bad: [...csv.bad] };
  const heading = csv.rows.find((row) => !isBlank(row));
  if (heading === undefined) {
    const wanted = `a heading with ${columns
      .filter((one) => one.needed)
      .map((one) => one.name)
      .join(', ')}`;
    return { rows: [], skipped, bad: [{ line: 1, column: '', read: '', wanted }] };
  }
  const { found, bad: headingBad } = findColumns(trimEnd(heading), columns, names);
  const bad = [...headingBad];
  if (bad.length > 0) return { rows: [], skipped, bad };
  const rows: Row<Name>[] = [];
  const headingText = heading.cells.map(headingSign).join('\n');
  for (const row of csv.rows) {
    if (row === heading) continue;
    const first = row.cells.find((cell) => cell !== '');
    if (first === undefined) skipped.blank += 1;
    else if (row.cells.map(headingSign).join('\n') === headingText) skipped.headings.push(row.line);
    else if (totalWords.test(first)) skipped.totals.push(row.line);
    else rows.push(rowOf(row, found, columns, bad));
  }
  return { rows, skipped, bad };
}

function rowOf<Name extends string>(
  row: CsvRow,
  found: readonly (FoundColumn<Name> | null)[],
  columns: readonly Column<Name>[],
  bad: BadCell[],
): Row<Name> {
  let refused = false;
  const index = (name: Name): number => found.findIndex((column) => column?.name === name);
  const text = (name: Name): string => row.cells[index(name)] ?? '';
  const refuse = (name: Name, wanted: string): void => {
    const column = found[index(name)]?.heading ?? name;
    refused = true;
    bad.push({ line: row.line, column, read: shownCell(text(name)), wanted });
  };
  const maybe = <T>(name: Name, read: Read<T>): T | null | undefined => {
    const cell = text(name);
    if (cell === '') return null;
    const reading = read(cell, found[index(name)]?.unit ?? null);
    if ('value' in reading) return reading.value;
    refuse(name, reading.wanted);
    return undefined;
  };
  const need = <T>(name: Name, read: Read<T>): T | undefined => {
    const value = maybe(name, read);
    if (value !== null) return value;
    refuse(name, columns.find((column) => column.name === name)?.wanted ?? 'a value');
    return undefined;
  };
  for (const [place, cell] of row.cells.entries()) {
    if (place < found.length || cell === '') continue;
    refused = true;
    const wanted = `at most ${found.length} cells, as the heading has. Maybe a cell with the parting mark in it needs quotation marks`;
    bad.push({ line: row.line, column: `cell ${place + 1}`, read: shownCell(cell), wanted });
  }
  return { line: row.line, isBad: () => refused, text, refuse, need, maybe };
}

function isBlank(row: CsvRow): boolean {
  return row.cells.every((cell) => cell === '');
}

/** Spreadsheets add empty columns at the end of every row. */
function trimEnd(row: CsvRow): CsvRow {
  const last = row.cells.findLastIndex((cell) => cell !== '');
  return { line: row.line, cells: row.cells.slice(0, last + 1) };
}

/** Puts a row under its key, in the order of the file. */
export function addTo<Name extends string>(
  groups: Map<string, Row<Name>[]>,
  key: string,
  row: Row<Name>,
): void {
  const group = groups.get(key);
  if (group === undefined) groups.set(key, [row]);
  else group.push(row);
}
