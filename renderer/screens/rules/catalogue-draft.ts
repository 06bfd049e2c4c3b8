// The catalogue of a system while it is being written: a row a component, its columns, and the components
// that were changed or added.
import { componentKinds } from '../../../core/catalogue/component.ts';
import type { CellKind, Word } from './cell-kinds.ts';
import { readValue } from './cell-kinds.ts';
import type { BookComponent } from './rules-shapes.ts';
import type { Cell, Problem } from './rules-draft.ts';

export interface CatalogueRow {
  readonly id: number;
  /** As it stands in the book; null for one that is new. */
  readonly before: BookComponent | null;
  readonly cells: Readonly<Record<string, Cell>>;
}

export interface CatalogueColumn {
  /** Also the last part of its place in a refusal: components.P836.crossMembers. */
  readonly name: string;
  readonly key: keyof BookComponent;
  readonly words: string;
  readonly kind: CellKind;
  readonly numeric: boolean;
  /** Every component has one. */
  readonly needed: boolean;
  readonly widthPx: number;
}

const kindWords: readonly Word[] = componentKinds.map((kind) => [kind, kind.replaceAll('-', ' ')]);
/** Stands for null, a component of no one system. */
const everySystem = 'every';
const serves: readonly Word[] = [
  ['this', 'this system'],
  [everySystem, 'every system'],
];

function column(
  name: string,
  key: keyof BookComponent,
  words: string,
  kind: CellKind,
  widthPx: number,
): CatalogueColumn {
  const numeric = ['length', 'weight', 'pressure', 'money'].includes(kind.as);
  const needed = ['code', 'name', 'kind', 'weight', 'system'].includes(name);
  return { name, key, words, kind, widthPx, numeric, needed };
}

export const catalogueColumns: readonly CatalogueColumn[] = [
  column('code', 'code', 'Code', { as: 'text' }, 76),
  column('name', 'name', 'Name', { as: 'text' }, 188),
  column('kind', 'kind', 'Kind', { as: 'word', options: kindWords }, 112),
  column('weight', 'weightGrams', 'Weight', { as: 'weight' }, 78),
  column('width', 'widthNm', 'Width', { as: 'length' }, 82),
  column('height', 'heightNm', 'Height', { as: 'length' }, 82),
  column('length', 'lengthNm', 'Length', { as: 'length' }, 82),
  column('crossMembers', 'crossMembersNm', 'Cross members at', { as: 'lengths' }, 150),
  column('tieHoles', 'tieHolesNm', 'Tie holes at', { as: 'points' }, 210),
  column('pressure', 'pressurePa', 'Pressure', { as: 'pressure' }, 84),
  column('pressureOnSide', 'pressureOnSidePa', 'On its side', { as: 'pressure' }, 84),
  column('canShrink', 'canShrink', 'Can shrink', { as: 'yes-no' }, 82),
  column('value', 'valueCents', 'New costs', { as: 'money' }, 84),
  column('system', 'system', 'Serves', { as: 'word', options: serves }, 102),
];

export function catalogueRow(component: BookComponent, id: number): CatalogueRow {
  return {
    id,
    before: component,
    cells: Object.fromEntries(
      catalogueColumns.map(({ name, key }) => {
        const value = component[key];
        const kept = key === 'system' ? (value === null ? everySystem : 'this') : value;
        return [name, kept === undefined ? {} : { kept }];
      }),
    ),
  };
}

export function newCatalogueRow(id: number): CatalogueRow {
  return { id, before: null, cells: { system: { kept: 'this' } } };
}

/** What a problem at a cell of a new or unreadable row is called; the core writes the code in its place. */
export function cataloguePlace(id: number, name: string): string {
  return `components#${id}.${name}`;
}

/** Components that are not as in the book, and cells that cannot be read. */
export function changedComponents(
  system: string,
  rows: readonly CatalogueRow[],
): {
  readonly components: readonly BookComponent[];
  readonly problems: readonly Problem[];
} {
  const problems: Problem[] = [];
  const components: BookComponent[] = [];
  const codes = new Map<string, number>();
  for (const row of rows) {
    const typed = catalogueColumns.some(({ name }) => (row.cells[name]?.typed ?? '') !== '');
    if (row.before === null && !typed) continue;
    const before = problems.length;
    const component = componentOf(system, row, problems);
    const twin = component === undefined ? undefined : codes.get(component.code);
    if (component !== undefined && twin !== undefined)
      problems.push({
        place: cataloguePlace(row.id, 'code'),
        message: `The code ${component.code} stands in the catalogue twice.`,
      });
    if (component === undefined) continue;
    codes.set(component.code, row.id);
    if (problems.length === before && !isSame(component, row.before)) components.push(component);
  }
  return { components, problems };
}

function componentOf(system: string, row: CatalogueRow, problems: Problem[]): BookComponent | undefined {
  // What the hire desk keeps of it stays as it is.
  const values: Record<string, unknown> = {
    hirePerDayCents: row.before?.hirePerDayCents ?? null,
    regangPerPieceH: row.before?.regangPerPieceH ?? 0,
    remark: row.before?.remark ?? null,
  };
  const code = row.cells['code']?.typed?.trim() ?? row.before?.code ?? '';
  for (const { name, key, kind, words, needed } of catalogueColumns) {
    const cell = row.cells[name];
    const place = cataloguePlace(row.id, name);
    const read = cell?.typed === undefined ? undefined : readValue(kind, cell.typed);
    if (read !== undefined && !read.ok) {
      const { message, hint } = read.error;
      problems.push({ place, message, ...(hint === undefined ? {} : { hint }) });
      continue;
    }
    const value = read === undefined ? cell?.kept : read.value;
    const isEmptyList = Array.isArray(value) && value.length === 0 && read !== undefined;
    if (value !== undefined && !isEmptyList) values[key] = value;
    else if (needed)
      problems.push({ place, message: `${code === '' ? 'A component' : code}: "${words}" is empty.` });
  }
  if (values['code'] === undefined) return undefined;
  values['system'] = values['system'] === everySystem ? null : (row.before?.system ?? system);
  return values as unknown as BookComponent;
}

function isSame(component: BookComponent, before: BookComponent | null): boolean {
  if (before === null) return false;
  const keys = new Set([...Object.keys(component), ...Object.keys(before)]) as Set<keyof BookComponent>;
  return [...keys].every((key) => JSON.stringify(component[key]) === JSON.stringify(before[key]));
}
