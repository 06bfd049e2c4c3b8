// The single numbers and words of a rule table: what it is, its value, where it comes from.
import type { ReactNode } from 'react';
import type { UnitSystem } from '../../../core/units/length.ts';
import { useUnits } from '../../parts/units.tsx';
import { printValue, type Word } from './cell-kinds.ts';
import { writeField, writeSource } from './draft-edits.ts';
import { EditGrid } from './edit-grid.tsx';
import type { GridCell, GridColumn, GridRow } from './grid-shapes.ts';
import { codesFor } from './offered-codes.ts';
import type { TableProps } from './rule-table-view.tsx';
import { cellText, draftOfRules, type RulesDraft, sourceAt } from './rules-draft.ts';
import type { FieldForm } from './table-forms.ts';

const columns: readonly GridColumn[] = [
  { id: 'what', header: 'What' },
  { id: 'value', header: 'Value', width: '31%' },
  { id: 'source', header: 'Source', width: '31%' },
];
const sourceColumn = 2;

export function FieldsGrid(
  props: TableProps & { readonly label: string; readonly fields: readonly FieldForm[] },
): ReactNode {
  const { fields, edits, problems } = props;
  const { draft, change } = edits;
  const { system } = useUnits();
  const before = draftOfRules(props.before, 0);
  const rows = fields.map((field): GridRow => ({
    key: field.place,
    label: field.words,
    cells: [
      { text: field.words, kind: null },
      valueCell(draft, before.cells[field.place]?.kept, field, system, problems),
      sourceCell(draft, before.sources[field.place], field, system),
    ],
  }));
  const write = (row: GridRow, column: number, text: string | null): void => {
    const field = fields.find(({ place }) => place === row.key);
    if (field === undefined) return;
    const where = `${props.form.words.toLowerCase()}: ${field.words.toLowerCase()}`;
    if (column === sourceColumn) {
      change(`source of ${where}`, (old) => writeSource(old, field.place, text ?? ''));
      return;
    }
    const known = text === null ? null : knownCode(field, draft, text);
    change(where, (old) => writeField(old, field, known, system));
  };
  return <EditGrid label={props.label} columns={columns} rows={rows} onWrite={write} />;
}

function valueCell(
  draft: RulesDraft,
  before: unknown,
  field: FieldForm,
  system: UnitSystem,
  problems: TableProps['problems'],
): GridCell {
  const text = cellText(draft.cells[field.place], field.kind, system);
  const inBook = printValue(field.kind, before, system);
  const offered = offeredFor(draft, field);
  return {
    text,
    kind: field.kind,
    otherwise: field.needed === true ? 'needed' : field.otherwise,
    problem: problems.find(({ place }) => place === field.place),
    before: inBook === text ? undefined : inBook,
    ...(offered === undefined ? {} : { offered }),
  };
}

function offeredFor(draft: RulesDraft, field: FieldForm): GridCell['offered'] {
  if (field.kinds !== undefined) return { words: codesFor(draft, field.kinds), only: false };
  if (field.kind.as === 'word') return { words: field.kind.options, only: true };
  if (field.kind.as !== 'words') return undefined;
  // Several of them may hold at once: any number of them, in their order.
  return { words: togethers(field.kind.options), only: true };
}

function togethers(options: readonly Word[]): readonly Word[] {
  const [first, ...others] = options;
  if (first === undefined) return [];
  const rest = togethers(others);
  const both = rest.map(([value, words]): Word => [`${first[0]} ${value}`, `${first[1]}, ${words}`]);
  return [first, ...both, ...rest];
}

function sourceCell(
  draft: RulesDraft,
  before: string | undefined,
  field: FieldForm,
  system: UnitSystem,
): GridCell {
  // Where no number stands, none comes from anywhere.
  if (!field.sourced || cellText(draft.cells[field.place], field.kind, system) === '')
    return { text: '', kind: null };
  const { words, own } = sourceAt(draft.sources, field.place);
  const text = own ? words : '';
  return {
    text,
    kind: { as: 'text' },
    otherwise: words,
    before: (before ?? '') === text ? undefined : before,
  };
}

/** A code typed in small letters is still that code. */
function knownCode(field: FieldForm, draft: RulesDraft, text: string): string {
  if (field.kinds === undefined) return text;
  const typed = text.trim().toLowerCase();
  return codesFor(draft, null).find(([code]) => code.toLowerCase() === typed)?.[0] ?? text;
}
