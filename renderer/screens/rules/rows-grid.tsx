// Rows of a rule table by a rising limit: written in place, added, taken out, pasted from a spreadsheet.
import type { ReactNode } from 'react';
import { useUnits } from '../../parts/units.tsx';
import { printValue, unitOf } from './cell-kinds.ts';
import { addRow, pasteRows, removeRow, writeRow, writeRowSource } from './draft-edits.ts';
import { EditGrid } from './edit-grid.tsx';
import { focusNewRow } from './focus-new-row.ts';
import type { GridCell, GridRow } from './grid-shapes.ts';
import { ProblemList } from './problem-list.tsx';
import type { TableProps } from './rule-table-view.tsx';
import { cellText, draftOfRules, sourceAt } from './rules-draft.ts';
import type { RowsForm } from './table-forms.ts';

export function RowsGrid(props: TableProps & { readonly rows: RowsForm }): ReactNode {
  const { rows: form, edits, problems } = props;
  const { draft, change } = edits;
  const { system } = useUnits();
  const before = draftOfRules(props.before, 0).rows[form.place] ?? [];
  const where = `${props.form.words.toLowerCase()}, ${form.words.toLowerCase()}`;
  const rows = (draft.rows[form.place] ?? []).map((row, index): GridRow => ({
    key: String(row.id),
    label: `row ${index + 1}`,
    canGo: true,
    cells: [
      ...form.columns.map(({ name, kind }): GridCell => {
        const text = cellText(row.cells[name], kind, system);
        const inBook = printValue(kind, before[index]?.cells[name]?.kept, system);
        return {
          text,
          kind,
          otherwise: 'needed',
          problem: problems.find(({ place }) => place === `${form.place}[${index}].${name}`),
          before: inBook === text ? undefined : inBook,
        };
      }),
      {
        text: row.source,
        kind: { as: 'text' },
        otherwise: sourceAt(draft.sources, form.place).words,
        before: (before[index]?.source ?? '') === row.source ? undefined : before[index]?.source,
      },
    ],
  }));
  return (
    <div className="rule-rows">
      <h3 className="rule-group">{form.words}</h3>
      <p className="soft">{form.about}</p>
      <ProblemList problems={problems.filter(({ place }) => place === form.place)} />
      {rows.length === 0 ? (
        <p className="soft rule-no-rows">No rows yet.</p>
      ) : (
        <EditGrid
          label={form.words}
          columns={[
            ...form.columns.map(({ name, words, kind }) => ({
              id: name,
              header: words,
              unit: unitOf(kind, system),
              numeric: true,
              width: 124,
            })),
            { id: 'source', header: 'Source', width: 232 },
          ]}
          rows={rows}
          onWrite={(row, index, text) => {
            const column = form.columns[index];
            change(`${where}, ${row.label}`, (old) =>
              column === undefined
                ? writeRowSource(old, form, Number(row.key), text ?? '')
                : writeRow(old, form, Number(row.key), column, text, system),
            );
          }}
          onRemove={(row) =>
            change(`${where}: ${row.label} taken out`, (old) => removeRow(old, form, Number(row.key)))
          }
          onPaste={(at, grid) =>
            change(`${where}: ${grid.length} rows pasted`, (old) => pasteRows(old, form, at, grid, system))
          }
        />
      )}
      <div className="rule-rows-foot">
        <button
          type="button"
          onClick={(event) => {
            change(`${where}: a row added`, (old) => addRow(old, form));
            focusNewRow(event.currentTarget.closest('.rule-rows'), rows.length);
          }}
        >
          Add a row
        </button>
      </div>
    </div>
  );
}
