// What is typed in the grid of a strip ticket, cell by cell, and how it becomes an entry: a number adds to what was
// counted before, a number below zero takes back, = takes what is still missing, =24 makes it 24 altogether.
import { type Answer, answer, refuse } from '../../../../core/answer.ts';
import type { EntryLine, TicketLine, TicketPart } from './asked.ts';

export const columns = ['ready', 'ready-hidden', 'to-clean', 'to-repair', 'quarantine', 'scrapped'] as const;
export type Column = (typeof columns)[number];

export const columnWords: Readonly<Record<Column, string>> = {
  ready: 'ready',
  'ready-hidden': 'hidden',
  'to-clean': 'to clean',
  'to-repair': 'to repair',
  quarantine: 'quarantine',
  scrapped: 'scrap',
};

/** Texts by line and condition. */
export type CountDraft = Readonly<Record<string, Readonly<Partial<Record<Column, string>>>>>;

export interface CellError {
  readonly line: string;
  readonly column: Column;
  readonly message: string;
  readonly hint: string | undefined;
}

export interface ReadEntry {
  readonly lines: EntryLine[];
  /** Lines that were typed on. */
  readonly keys: readonly string[];
  readonly errors: readonly CellError[];
}

export function keyOf(part: string, component: string): string {
  return JSON.stringify([part, component]);
}

export function withCell(draft: CountDraft, line: string, column: Column, text: string): CountDraft {
  return { ...draft, [line]: { ...draft[line], [column]: text } };
}

/** The lines that were typed, in the order of the ticket, and what cannot be read of them. */
export function readEntry(
  parts: readonly Pick<TicketPart, 'part' | 'expected'>[],
  draft: CountDraft,
  owner: string | null,
): ReadEntry {
  const lines: EntryLine[] = [];
  const keys: string[] = [];
  const errors: CellError[] = [];
  for (const { part, expected } of parts)
    for (const line of expected) {
      const key = keyOf(part, line.component);
      const cells = draft[key] ?? {};
      const typed = columns.filter((column) => (cells[column] ?? '').trim() !== '');
      if (typed.length === 0) continue;
      keys.push(key);
      // What other cells of the row take is not missing any more.
      let rest = line.missing;
      const plainFirst = [
        ...typed.filter((each) => !isRest(cells[each])),
        ...typed.filter((each) => isRest(cells[each])),
      ];
      for (const column of plainFirst) {
        const read = readCell(cells[column] ?? '', line.counted[column], rest);
        if (!read.ok) {
          errors.push({ line: key, column, message: read.error.message, hint: read.error.hint });
          continue;
        }
        rest -= read.value;
        lines.push({
          part,
          component: line.component,
          condition: column,
          quantity: read.value,
          ...(owner !== null && { owner }),
        });
      }
    }
  return { lines, keys, errors };
}

function isRest(text: string | undefined): boolean {
  return text?.trim() === '=';
}

/** Pieces that a cell adds. */
function readCell(text: string, counted: number, rest: number): Answer<number> {
  const words = text.trim();
  if (words === '=') return answer(Math.max(rest, 0));
  const found = /^(=?)([-+−]?)(\d{1,9})$/u.exec(words);
  if (found === null)
    return refuse('count-unreadable', `"${words}" is not a whole number of pieces.`, {
      hint: 'Maybe write it like 24, =24 for altogether, = for what is missing, or -2 to take two back.',
    });
  const [, isTotal, sign, digits] = found;
  const number = Number(digits) * (sign === '-' || sign === '−' ? -1 : 1);
  return answer(isTotal === '=' ? number - counted : number);
}

/** Every line that nobody has counted, as looked for and not there. */
export function restAsNone(parts: readonly Pick<TicketPart, 'part' | 'expected'>[]): EntryLine[] {
  return parts.flatMap(({ part, expected }) =>
    expected
      .filter((line) => !line.isCounted && line.quantity > 0)
      .map(({ component }) => ({ part, component, condition: 'ready' as const, quantity: 0 })),
  );
}

/** In words what a line still lacks. */
export function missingWords(
  line: Pick<TicketLine, 'isCounted' | 'missing' | 'sought'>,
  isOpen: boolean,
): string {
  if (!line.isCounted && line.sought === 0) return isOpen ? 'not counted' : 'not counted, taken as there';
  return line.missing === 0 ? 'all there' : `${line.missing} missing`;
}
