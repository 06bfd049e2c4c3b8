// The columns a kind of file may have: their names as people see them in the heading, whether a file can
// do without, and what a cell should hold. Screens and the README show these very lists.
import type { BadCell } from './bad.ts';
import { maybe } from './nearest.ts';

type Unit = 'length' | 'weight' | 'pressure';

export interface Column<Name extends string = string> {
  readonly name: Name;
  /** Whether the heading must have it; a cell of it may still be blank where the kind says so. */
  readonly needed: boolean;
  /** What a cell should hold, in words that finish the sentence "wanted ...". */
  readonly wanted: string;
  /** Where a heading may carry the unit of its bare numbers, as `width (in)`. */
  readonly unit?: Unit;
}

/** A column of the file: which of ours it is, and the unit its heading gave. */
export interface FoundColumn<Name extends string> {
  readonly name: Name;
  readonly heading: string;
  readonly unit: string | null;
}

const units: Readonly<Record<Unit, readonly string[]>> = {
  length: ['mm', 'cm', 'm', 'in', 'ft', "'", '"'],
  weight: ['kg', 'g', 't', 'lb', 'lbs'],
  pressure: ['kpa', 'kn/m2', 'pa', 'psf'],
};

/** Lower case, single spaces, underscores as spaces: how two headings are compared. */
export function headingSign(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(/[_\s]+/gu, ' ')
    .trim();
}

/**
 * Finds each heading among the columns. `names` gives our name for a heading of the file, '' to leave that
 * column out. Answers one entry a cell of the heading, null for columns left out, and what was wrong.
 */
export function findColumns<Name extends string>(
  heading: { readonly line: number; readonly cells: readonly string[] },
  columns: readonly Column<Name>[],
  names: Readonly<Record<string, string>>,
): { readonly found: readonly (FoundColumn<Name> | null)[]; readonly bad: readonly BadCell[] } {
  const bad: BadCell[] = [];
  const refuse = (column: string, read: string, wanted: string): void => {
    bad.push({ line: heading.line, column, read, wanted });
  };
  const renamed = new Map(Object.entries(names).map(([file, ours]) => [headingSign(file), ours]));
  const signs = new Set(heading.cells.map(headingSign));
  for (const file of Object.keys(names))
    if (!signs.has(headingSign(file))) refuse(file, '', `a heading "${file}", since it was to be renamed`);
  const taken = new Set<string>();
  const found = heading.cells.map((cell) => {
    const name = renamed.get(headingSign(cell)) ?? cell;
    if (name === '') return null;
    const one = findColumn(name, columns);
    if (typeof one === 'string') {
      refuse(cell, cell, one);
      return null;
    }
    if (taken.has(one.name)) refuse(cell, cell, `the column "${one.name}" once`);
    taken.add(one.name);
    return { ...one, heading: cell };
  });
  for (const column of columns)
    if (column.needed && !taken.has(column.name))
      refuse(column.name, '', `a column "${column.name}": ${column.wanted}`);
  return { found, bad };
}

function findColumn<Name extends string>(
  heading: string,
  columns: readonly Column<Name>[],
): { readonly name: Name; readonly unit: string | null } | string {
  const exact = columns.find((column) => headingSign(column.name) === headingSign(heading));
  if (exact !== undefined) return { name: exact.name, unit: null };
  const [, base = heading, unit = ''] = /^(.*\S)\s*[([]\s*([^)\]]+?)\s*[)\]]$/u.exec(heading) ?? [];
  const column = columns.find((one) => headingSign(one.name) === headingSign(base));
  const names = columns.map((one) => one.name);
  if (column === undefined) return `one of the columns ${names.join(', ')}${maybe(base, names)}`;
  if (column.unit === undefined) return `the heading "${column.name}" without a unit`;
  if (units[column.unit].includes(unit.toLowerCase())) return { name: column.name, unit: unit.toLowerCase() };
  return `the heading "${column.name}" with one of the units ${units[column.unit].join(', ')}`;
}
