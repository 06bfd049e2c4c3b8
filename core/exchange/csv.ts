// Reads the text of a CSV file into rows of cells that know their line, whatever spreadsheet wrote it: a
// byte order mark, commas, semicolons or tabs, any line ends, quoted cells, feet and inches unquoted.
import { CsvError, parse } from 'csv-parse/sync';
import { type BadCell, shownCell } from './bad.ts';

export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export type CsvReading = { readonly rows: readonly CsvRow[] } | { readonly bad: readonly BadCell[] };

const mostRows = 50_000;
const mostCellCharacters = 4_000;
const delimiters = [',', ';', '\t'] as const;

/** All rows, blank ones too. Unreadable text answers what is wrong with it and where. */
export function readCsv(text: string): CsvReading {
  // One kind of line end: a file pasted together from two machines has both.
  const lines = text.replace(/^\uFEFF/u, '').replaceAll(/\r\n?/gu, '\n');
  const foreign = lines.search(/[\0\uFFFD]/u);
  if (foreign >= 0) {
    const line = lines.slice(0, foreign).split('\n').length;
    return unreadable(line, 'letters that can be read. Maybe save the file again as "CSV UTF-8"');
  }
  let records: readonly { readonly record: string[]; readonly info: { readonly lines: number } }[];
  try {
    records = parse(lines, {
      delimiter: delimiterOf(lines),
      record_delimiter: '\n',
      relax_column_count: true,
      relax_quotes: true,
      info: true,
      max_record_size: 128_000,
    }) as unknown as typeof records;
  } catch (error) {
    return parserRefusal(error, lines);
  }
  if (records.length > mostRows + 1) {
    return unreadable(mostRows + 2, `at most ${mostRows} rows. Maybe part the file`);
  }
  const rows = records.map(({ record, info }) => ({
    line: info.lines - record.reduce((breaks, cell) => breaks + cell.split('\n').length - 1, 0),
    cells: record.map((cell) => cell.trim()),
  }));
  const tooLong = rows.find((row) => row.cells.some((cell) => cell.length > mostCellCharacters));
  if (tooLong !== undefined) {
    return unreadable(
      tooLong.line,
      `cells of at most ${mostCellCharacters} characters. Maybe a quotation mark is never closed`,
      tooLong.cells.find((cell) => cell.length > mostCellCharacters),
    );
  }
  return { rows };
}

/** The mark that parts the cells of the first line with anything in it; a comma where none does. */
function delimiterOf(text: string): string {
  const heading = text.split('\n').find((line) => line.trim() !== '') ?? '';
  const unquoted = heading.replaceAll(/"[^"]*"/gu, '');
  let best: string = ',';
  let most = 0;
  for (const delimiter of delimiters) {
    const count = unquoted.split(delimiter).length - 1;
    if (count > most) [best, most] = [delimiter, count];
  }
  return best;
}

function parserRefusal(error: unknown, lines: string): CsvReading {
  if (!(error instanceof CsvError)) throw error;
  if (error.code === 'CSV_QUOTE_NOT_CLOSED')
    return unreadable(
      lastOpenQuote(lines),
      'a closing quotation mark: a cell that begins with one has no end',
    );
  const line = typeof error['lines'] === 'number' ? error['lines'] : 1;
  if (error.code === 'CSV_MAX_RECORD_SIZE')
    return unreadable(line, 'a row of at most 128000 characters. Maybe a quotation mark is never closed');
  return unreadable(line, `rows of a CSV file (${error.code})`);
}

/** The line where the quotation that never ends most likely begins: the parser only knows the file's last. */
function lastOpenQuote(lines: string): number {
  const all = lines.split('\n');
  const index = all.findLastIndex((line) => /(?:^|[,;\t])"/u.test(line) && line.split('"').length % 2 === 0);
  return index < 0 ? all.length : index + 1;
}

function unreadable(line: number, wanted: string, read = ''): CsvReading {
  return { bad: [{ line, column: '', read: shownCell(read), wanted }] };
}
