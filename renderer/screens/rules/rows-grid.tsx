// Rows of a rule table by a rising limit: written in place, added, taken out, pasted from a spreadsheet.
import { type ReactNode, useId, useState } from 'react';
import { useUnits } from '../../parts/units.tsx';
import { printValue, unitOf } from './cell-kinds.ts';
import { addRow, pasteRows, removeRow, writeRow, writeSource } from './draft-edits.ts';
import { EditGrid } from './edit-grid.tsx';
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
    cells: form.columns.map(({ name, kind }): GridCell => {
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
          columns={form.columns.map(({ name, words, kind }) => ({
            id: name,
            header: words,
            unit: unitOf(kind, system),
            numeric: true,
            widthPx: 150,
          }))}
          rows={rows}
          onWrite={(row, index, text) => {
            const column = form.columns[index];
            if (column !== undefined)
              change(`${where}, ${row.label}`, (old) =>
                writeRow(old, form, Number(row.key), column, text, system),
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
        <button type="button" onClick={() => change(`${where}: a row added`, (old) => addRow(old, form))}>
          Add a row
        </button>
        <SourceField key={form.place} {...props} />
      </div>
    </div>
  );
}

/** The rows of one table come from one place. */
function SourceField(props: TableProps & { readonly rows: RowsForm }): ReactNode {
  const { rows: form, edits } = props;
  const { draft, change } = edits;
  const id = useId();
  const { words, own } = sourceAt(draft.sources, form.place);
  const [typed, setTyped] = useState<string | null>(null);
  const take = (): void => {
    if (typed !== null && typed.trim() !== (own ? words : ''))
      change(`source of ${form.words.toLowerCase()}`, (old) => writeSource(old, form.place, typed));
    setTyped(null);
  };
  return (
    <span className="rule-source">
      <label htmlFor={id}>Source of these rows</label>
      <input
        id={id}
        value={typed ?? (own ? words : '')}
        placeholder={own ? '' : words}
        maxLength={400}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') setTyped(null);
        }}
      />
      <span className="on-paper">{own ? '' : words}</span>
    </span>
  );
}
