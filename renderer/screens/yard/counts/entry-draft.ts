// What is typed in the grid of a count, cell by cell, and how it becomes an entry: a line in which one cell is filled
// is counted, its empty cells are none.
import { type CountedFigure, readCounted } from '../../../../core/yard/counted-text.ts';
import type { Input, Output } from './asked.ts';

export type ReadLine = Output<'count.read'>['lines'][number];
export const columns = ['ready', 'ready-hidden', 'to-clean', 'to-repair', 'quarantine', 'scrapped'] as const;
export type Column = (typeof columns)[number];

/** Texts by line and condition. */
export type EntryDraft = Readonly<Record<string, Readonly<Partial<Record<Column, string>>>>>;

type EntryLine = Input<'count.enter'>['lines'][number];

export interface CellError {
  readonly line: string;
  readonly column: Column;
  readonly message: string;
  readonly hint: string | undefined;
}

export function keyOf(line: Pick<ReadLine, 'location' | 'component' | 'owner'>): string {
  return JSON.stringify([line.location, line.component, line.owner]);
}

export function withCell(draft: EntryDraft, line: string, column: Column, text: string): EntryDraft {
  return { ...draft, [line]: { ...draft[line], [column]: text } };
}

/** The lines that were typed, and what cannot be read of them. */
export function readEntry(
  lines: readonly Pick<ReadLine, 'location' | 'component' | 'owner' | 'bundleSize'>[],
  draft: EntryDraft,
): { readonly lines: EntryLine[]; readonly keys: readonly string[]; readonly errors: readonly CellError[] } {
  const entry: EntryLine[] = [];
  const errors: CellError[] = [];
  const keys: string[] = [];
  for (const line of lines) {
    const key = keyOf(line);
    const typed = columns.filter((column) => (draft[key]?.[column] ?? '').trim() !== '');
    if (typed.length === 0) continue;
    keys.push(key);
    for (const column of typed) {
      const text = draft[key]?.[column] ?? '';
      const read = readCounted(text, line.component, line.bundleSize);
      if (read.ok) entry.push(entryLine(line, column, text, read.value));
      else errors.push({ line: key, column, message: read.error.message, hint: read.error.hint });
    }
  }
  return { lines: entry, keys, errors };
}

function entryLine(
  { location, component, owner }: Pick<ReadLine, 'location' | 'component' | 'owner'>,
  condition: Column,
  text: string,
  { quantity, uncertainty }: CountedFigure,
): EntryLine {
  const isPlain = /^\s*\d+\s*$/u.test(text);
  return {
    location,
    component,
    owner,
    condition,
    quantity,
    ...(uncertainty > 0 && { uncertainty }),
    // As it was written, where that says more than the number.
    ...(isPlain ? {} : { note: text.trim() }),
  };
}
