// Rule tables and catalogue while they are being written: cells that keep what was typed, read into rules
// again whenever something changes. A cell that cannot be read is a problem at its place, never a lost text.
import type { RuleName, RuleTables } from '../../../core/catalogue/rules.ts';
import type { UnitSystem } from '../../../core/units/length.ts';
import { tableForms } from './all-forms.ts';
import { type CellKind, printValue, readValue } from './cell-kinds.ts';
import type { CatalogueRow } from './catalogue-draft.ts';
import type { FieldForm, RowsForm, TableForm } from './table-forms.ts';

/** `kept` is the value from the book; a typed text stands over it until it is given up. */
export interface Cell {
  readonly kept?: unknown;
  readonly typed?: string;
}

export interface DraftRow {
  /** Stays with the row when others go. */
  readonly id: number;
  /** By the name of the column. */
  readonly cells: Readonly<Record<string, Cell>>;
  /** '' where it is not given. */
  readonly source: string;
}

export interface RulesDraft {
  readonly system: string;
  readonly systemName: string;
  /** Tables that the system has. Cells of the others stay, so that a table put back is as it was. */
  readonly tables: ReadonlySet<RuleName>;
  readonly cells: Readonly<Record<string, Cell>>;
  readonly rows: Readonly<Record<string, readonly DraftRow[]>>;
  /** Of everything but rows, by place. */
  readonly sources: Readonly<Record<string, string>>;
  readonly catalogue: readonly CatalogueRow[];
  readonly nextId: number;
}

/** What is wrong at a place, in the words of the core or of the reader of the cell. */
export interface Problem {
  readonly place: string;
  readonly message: string;
  readonly hint?: string;
}

export function cellText(cell: Cell | undefined, kind: CellKind, system: UnitSystem): string {
  return cell?.typed ?? printValue(kind, cell?.kept, system);
}

export function draftOfRules(
  rules: RuleTables,
  firstId: number,
): Pick<RulesDraft, 'tables' | 'cells' | 'rows' | 'sources' | 'nextId'> {
  const cells: Record<string, Cell> = {};
  const rows: Record<string, readonly DraftRow[]> = {};
  const sources: Record<string, string> = { ...rules.sources };
  let nextId = firstId;
  for (const form of tableForms) {
    for (const { place, path } of form.fields) {
      const value = valueAt(rules, path);
      if (value !== undefined) cells[place] = { kept: value };
    }
    for (const { place, path, columns } of form.rows) {
      const kept = (valueAt(rules, path) ?? []) as readonly Readonly<Record<string, unknown>>[];
      rows[place] = kept.map((row, index) => {
        const id = nextId;
        nextId += 1;
        return {
          id,
          cells: Object.fromEntries(columns.map(({ key, name }) => [name, { kept: row[key] }])),
          source: sourceOfRow(rules.sources ?? {}, place, index),
        };
      });
      // They go with their rows from here on.
      for (const known of Object.keys(sources))
        if (known === place || known.startsWith(`${place}[`)) delete sources[known];
    }
  }
  const tables = new Set(tableForms.map(({ name }) => name).filter((name) => rules[name] !== undefined));
  return { tables, cells, rows, sources, nextId };
}

/** A row's own source, that of one of its cells, or that of all rows. */
function sourceOfRow(sources: Readonly<Record<string, string>>, place: string, index: number): string {
  const own = `${place}[${index}]`;
  const ofCell = Object.keys(sources).find((known) => known.startsWith(`${own}.`));
  return sources[own] ?? sources[ofCell ?? place] ?? '';
}

/** The rules as far as they can be read, and every cell that cannot be. */
export function rulesOfDraft(draft: RulesDraft): {
  readonly rules: RuleTables;
  readonly problems: readonly Problem[];
} {
  const rules: Record<string, unknown> = {};
  const problems: Problem[] = [];
  for (const form of tableForms.filter(({ name }) => draft.tables.has(name))) {
    rules[form.name] = {};
    for (const each of form.fields) readField(draft, form, each, rules, problems);
    for (const each of form.rows) readRows(draft, each, rules, problems);
  }
  // What a number that is gone came from is told of nothing.
  const sources = Object.fromEntries(
    Object.entries(draft.sources).filter(([place, words]) => words !== '' && isFilled(rules, place)),
  );
  for (const form of tableForms.filter(({ name }) => draft.tables.has(name)))
    for (const rows of form.rows) Object.assign(sources, rowSources(draft, rows));
  if (Object.keys(sources).length > 0) rules['sources'] = sources;
  // The forms name every key by its place in RuleTables; the core holds the whole against its shape again.
  return { rules, problems };
}

function isFilled(rules: Readonly<Record<string, unknown>>, place: string): boolean {
  const within = (one: string): boolean => one === place || one.startsWith(`${place}.`);
  return tableForms
    .filter(({ name }) => rules[name] !== undefined)
    .some(
      (form) =>
        form.name === place ||
        [...form.fields, ...form.rows].some(
          (one) => within(one.place) && valueAt(rules, one.path) !== undefined,
        ),
    );
}

function readField(
  draft: RulesDraft,
  form: TableForm,
  field: FieldForm,
  rules: Record<string, unknown>,
  problems: Problem[],
): void {
  const value = readCell(draft.cells[field.place], field.kind, field.place, problems);
  if (value !== undefined) {
    putAt(rules, field.path, value);
    return;
  }
  if (!isNeeded(draft, form, field) || problems.at(-1)?.place === field.place) return;
  problems.push({
    place: field.place,
    message: `"${field.words}" is empty, and the table cannot do without it.`,
  });
}

function isNeeded(draft: RulesDraft, form: TableForm, { needed }: FieldForm): boolean {
  if (typeof needed === 'boolean') return needed;
  return form.fields.some(
    ({ place, kind }) => place.startsWith(`${needed.part}.`) && !isEmpty(draft.cells[place], kind),
  );
}

function isEmpty(cell: Cell | undefined, kind: CellKind): boolean {
  return cellText(cell, kind, 'metric').trim() === '';
}

/** Where all rows have one source, their list has it too: findings ask for either. */
function rowSources(draft: RulesDraft, form: RowsForm): Readonly<Record<string, string>> {
  const given = givenRows(draft, form).map(({ row }) => row.source);
  const sources = Object.fromEntries(
    given.flatMap((source, index) => (source === '' ? [] : [[`${form.place}[${index}]`, source]])),
  );
  const [shared, ...others] = new Set(given);
  const isShared = shared !== undefined && shared !== '' && others.length === 0;
  return isShared ? { ...sources, [form.place]: shared } : sources;
}

/** Rows in which something stands, each with its index on screen: an empty one is no row of the rules. */
export function givenRows(
  draft: RulesDraft,
  form: RowsForm,
): readonly { readonly row: DraftRow; readonly index: number }[] {
  return (draft.rows[form.place] ?? [])
    .map((row, index) => ({ row, index }))
    .filter(({ row }) => form.columns.some(({ name, kind }) => !isEmpty(row.cells[name], kind)));
}

function readRows(
  draft: RulesDraft,
  form: RowsForm,
  rules: Record<string, unknown>,
  problems: Problem[],
): void {
  const given = givenRows(draft, form);
  if (given.length === 0 && form.optional) return;
  const values = given.map(({ row, index }) =>
    Object.fromEntries(
      form.columns.map(({ key, name, kind, words }) => {
        const place = `${form.place}[${index}].${name}`;
        const value = readCell(row.cells[name], kind, place, problems);
        if (value === undefined && problems.at(-1)?.place !== place)
          problems.push({ place, message: `${form.words}, row ${index + 1}: "${words}" is empty.` });
        return [key, value];
      }),
    ),
  );
  putAt(rules, form.path, values);
}

function readCell(cell: Cell | undefined, kind: CellKind, place: string, problems: Problem[]): unknown {
  if (cell?.typed === undefined) return cell?.kept;
  const read = readValue(kind, cell.typed);
  if (read.ok) {
    // An empty list says nothing, as an empty cell does.
    return Array.isArray(read.value) && read.value.length === 0 ? undefined : read.value;
  }
  const { message, hint } = read.error;
  problems.push({ place, message, ...(hint === undefined ? {} : { hint }) });
  return undefined;
}

function valueAt(rules: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (value === undefined ? undefined : (value as Record<string, unknown>)[key]),
    rules,
  );
}

function putAt(rules: Record<string, unknown>, path: readonly string[], value: unknown): void {
  let at = rules;
  for (const key of path.slice(0, -1)) {
    at[key] ??= {};
    at = at[key] as Record<string, unknown>;
  }
  const last = path.at(-1);
  if (last !== undefined) at[last] = value;
}

/** The source at a place: its own, or that of what it is part of, up to its table. */
export function sourceAt(
  sources: Readonly<Record<string, string>>,
  place: string,
): { readonly words: string; readonly own: boolean } {
  const own = sources[place];
  if (own !== undefined && own !== '') return { words: own, own: true };
  for (let at = place; at.includes('.');) {
    at = at.slice(0, at.lastIndexOf('.'));
    const words = sources[at];
    if (words !== undefined && words !== '') return { words, own: false };
  }
  return { words: 'default', own: false };
}
