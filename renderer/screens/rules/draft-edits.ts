// What a person does to rule tables and catalogue, each as a step from one draft to the next.
import type { RuleName } from '../../../core/catalogue/rules.ts';
import type { UnitSystem } from '../../../core/units/length.ts';
import { catalogueColumns, type CatalogueRow, newCatalogueRow } from './catalogue-draft.ts';
import { type CellKind, printValue, withUnit } from './cell-kinds.ts';
import type { Cell, DraftRow, RulesDraft } from './rules-draft.ts';
import type { ColumnForm, FieldForm, RowsForm } from './table-forms.ts';

/** The cell with a text over what was kept; the kept text typed again is no change. */
export function writtenCell(cell: Cell | undefined, kind: CellKind, text: string, system: UnitSystem): Cell {
  const kept = cell?.kept === undefined ? {} : { kept: cell.kept };
  if (text.trim() === printValue(kind, cell?.kept, system)) return kept;
  return { ...kept, typed: withUnit(kind, text, system) };
}

function droppedCell(cell: Cell | undefined): Cell {
  return cell?.kept === undefined ? {} : { kept: cell.kept };
}

/** `text` null gives up what was typed. */
export function writeField(
  draft: RulesDraft,
  { place, kind }: FieldForm,
  text: string | null,
  system: UnitSystem,
): RulesDraft {
  const before = draft.cells[place];
  const cell = text === null ? droppedCell(before) : writtenCell(before, kind, text, system);
  return { ...draft, cells: { ...draft.cells, [place]: cell } };
}

export function writeSource(draft: RulesDraft, place: string, words: string): RulesDraft {
  const { [place]: _, ...others } = draft.sources;
  const plain = words.trim();
  return { ...draft, sources: plain === '' ? others : { ...others, [place]: plain } };
}

export function addTable(draft: RulesDraft, name: RuleName): RulesDraft {
  return { ...draft, tables: new Set([...draft.tables, name]) };
}

export function removeTable(draft: RulesDraft, name: RuleName): RulesDraft {
  return { ...draft, tables: new Set([...draft.tables].filter((each) => each !== name)) };
}

export function writeRow(
  draft: RulesDraft,
  form: RowsForm,
  id: number,
  column: ColumnForm,
  text: string | null,
  system: UnitSystem,
): RulesDraft {
  return changeRows(draft, form.place, (row) =>
    row.id === id ? withCell(row, column.name, column.kind, text, system) : row,
  );
}

export function writeRowSource(draft: RulesDraft, form: RowsForm, id: number, words: string): RulesDraft {
  return changeRows(draft, form.place, (row) => (row.id === id ? { ...row, source: words.trim() } : row));
}

export function addRow(draft: RulesDraft, form: RowsForm): RulesDraft {
  const rows = [...(draft.rows[form.place] ?? []), { id: draft.nextId, cells: {}, source: '' }];
  return { ...draft, rows: { ...draft.rows, [form.place]: rows }, nextId: draft.nextId + 1 };
}

export function removeRow(draft: RulesDraft, form: RowsForm, id: number): RulesDraft {
  const rows = (draft.rows[form.place] ?? []).filter((row) => row.id !== id);
  return { ...draft, rows: { ...draft.rows, [form.place]: rows } };
}

/** Cells of a spreadsheet laid over the rows from one cell on; what is over becomes rows of its own. */
export function pasteRows(
  draft: RulesDraft,
  form: RowsForm,
  at: { readonly row: number; readonly column: number },
  grid: readonly (readonly string[])[],
  system: UnitSystem,
): RulesDraft {
  let next = draft;
  while ((next.rows[form.place] ?? []).length < at.row + grid.length) next = addRow(next, form);
  grid.forEach((texts, offset) => {
    const row = next.rows[form.place]?.[at.row + offset];
    texts.forEach((text, index) => {
      const column = form.columns[at.column + index];
      if (row === undefined) return;
      if (column !== undefined) next = writeRow(next, form, row.id, column, text, system);
      else if (at.column + index === form.columns.length) next = writeRowSource(next, form, row.id, text);
    });
  });
  return next;
}

export function writeComponent(
  draft: RulesDraft,
  id: number,
  name: string,
  text: string | null,
  system: UnitSystem,
): RulesDraft {
  const column = catalogueColumns.find((each) => each.name === name);
  if (column === undefined) return draft;
  const catalogue = draft.catalogue.map((row) =>
    row.id === id ? withCell(row, name, column.kind, text, system) : row,
  );
  return { ...draft, catalogue };
}

export function addComponent(draft: RulesDraft): RulesDraft {
  const catalogue: readonly CatalogueRow[] = [...draft.catalogue, newCatalogueRow(draft.nextId)];
  return { ...draft, catalogue, nextId: draft.nextId + 1 };
}

/** Only of one that is not in the book yet: what the book has stays, as stock and designs may name it. */
export function removeComponent(draft: RulesDraft, id: number): RulesDraft {
  return {
    ...draft,
    catalogue: draft.catalogue.filter((row) => row.id !== id || row.before !== null),
  };
}

/** Cells of a spreadsheet laid over the components that are shown, from one cell on. */
export function pasteComponents(
  draft: RulesDraft,
  shown: readonly number[],
  columnAt: number,
  grid: readonly (readonly string[])[],
  system: UnitSystem,
): RulesDraft {
  let next = draft;
  const ids = [...shown];
  while (ids.length < grid.length) {
    ids.push(next.nextId);
    next = addComponent(next);
  }
  grid.forEach((texts, offset) => {
    const id = ids[offset];
    texts.forEach((text, index) => {
      const column = catalogueColumns[columnAt + index];
      const row = next.catalogue.find((each) => each.id === id);
      // The code of a component that the book has is not written over.
      if (id === undefined || column === undefined || (column.name === 'code' && row?.before)) return;
      next = writeComponent(next, id, column.name, text, system);
    });
  });
  return next;
}

function withCell<R extends DraftRow | CatalogueRow>(
  row: R,
  name: string,
  kind: CellKind,
  text: string | null,
  system: UnitSystem,
): R {
  const before = row.cells[name];
  const cell = text === null ? droppedCell(before) : writtenCell(before, kind, text, system);
  return { ...row, cells: { ...row.cells, [name]: cell } };
}

function changeRows(draft: RulesDraft, place: string, change: (row: DraftRow) => DraftRow): RulesDraft {
  return { ...draft, rows: { ...draft.rows, [place]: (draft.rows[place] ?? []).map(change) } };
}
