// The catalogue of a system: its panels and hardware with weight, size and what else the rules ask for.
import { type ReactNode, useMemo, useState } from 'react';
import { useUnits } from '../../parts/units.tsx';
import { catalogueColumns, cataloguePlace, type CatalogueRow } from './catalogue-draft.ts';
import { printValue, unitOf } from './cell-kinds.ts';
import { addComponent, pasteComponents, removeComponent, writeComponent } from './draft-edits.ts';
import type { DraftEdits } from './draft-store.ts';
import { EditGrid } from './edit-grid.tsx';
import { focusNewRow } from './focus-new-row.ts';
import type { GridCell, GridRow } from './grid-shapes.ts';
import { ProblemList } from './problem-list.tsx';
import { codeOf, problemsAtNoCell, problemsOf } from './problem-places.ts';
import { cellText, type Problem } from './rules-draft.ts';

export function CatalogueView(props: {
  readonly edits: DraftEdits;
  readonly problems: readonly Problem[];
}): ReactNode {
  const { edits, problems } = props;
  const { draft, change } = edits;
  const { system } = useUnits();
  const [filter, setFilter] = useState('');
  const shown = useMemo(() => shownRows(draft.catalogue, filter), [draft.catalogue, filter]);
  const rows = shown.map((row): GridRow => {
    const code = codeOf(row);
    return {
      key: String(row.id),
      label: code === '' ? 'new component' : code,
      canGo: row.before === null,
      cells: catalogueColumns.map((column): GridCell => {
        const cell = row.cells[column.name];
        const text = cellText(cell, column.kind, system);
        const inBook = printValue(column.kind, cell?.kept, system);
        return {
          text,
          // Stock, designs and movements name a component by its code.
          kind: column.name === 'code' && row.before !== null ? null : column.kind,
          otherwise: row.before === null && column.needed ? 'needed' : '',
          ...(column.kind.as === 'word' ? { offered: { words: column.kind.options, only: true } } : {}),
          problem: problems.find(({ place }) => place === cataloguePlace(row.id, column.name)),
          before: inBook === text ? undefined : inBook,
        };
      }),
    };
  });
  const newOnes = shown.filter(({ before }) => before === null).length;
  const ids = shown.map(({ id }) => id);
  const cells = new Set(
    draft.catalogue.flatMap(({ id }) => catalogueColumns.map(({ name }) => cataloguePlace(id, name))),
  );
  return (
    <section className="rule-table catalogue" aria-labelledby="rule-table-head">
      <div className="rule-table-head">
        <h2 id="rule-table-head">Catalogue</h2>
        <label className="table-filter">
          <span>Filter</span>
          <input type="search" value={filter} onChange={(event) => setFilter(event.target.value)} />
        </label>
        <output className="soft">
          {shown.length === draft.catalogue.length
            ? shown.length
            : `${shown.length} of ${draft.catalogue.length}`}{' '}
          components
        </output>
        <button
          type="button"
          onClick={(event) => {
            change('catalogue: a component added', addComponent);
            focusNewRow(event.currentTarget.closest('section'), newOnes);
          }}
        >
          Add a component
        </button>
      </div>
      <p className="rule-about">
        What the system is made of. Sizes, cross members and tie holes are of the piece standing upright, from
        its lower left corner; a pressure is what the panel may take.
      </p>
      <ProblemList problems={problemsAtNoCell(problemsOf(problems, 'components'), cells)} />
      <EditGrid
        wide
        label="Catalogue"
        columns={catalogueColumns.map(({ name, words, kind, numeric, widthPx }) => ({
          id: name,
          header: words,
          unit: unitOf(kind, system),
          numeric,
          width: widthPx,
        }))}
        rows={rows}
        onWrite={(row, index, text) => {
          const column = catalogueColumns[index];
          if (column !== undefined)
            change(`${labelOf(row)}, ${column.words.toLowerCase()}`, (old) =>
              writeComponent(old, Number(row.key), column.name, text, system),
            );
        }}
        onRemove={(row) =>
          change(`${labelOf(row)} taken out`, (old) => removeComponent(old, Number(row.key)))
        }
        onPaste={(at, grid) =>
          change(`catalogue: ${grid.length} rows pasted`, (old) =>
            pasteComponents(old, ids.slice(at.row), at.column, grid, system),
          )
        }
      />
    </section>
  );
}

function labelOf(row: GridRow): string {
  return `catalogue: ${row.label}`;
}

/** New components stand first, whatever is filtered: they are still being written. */
function shownRows(rows: readonly CatalogueRow[], filter: string): readonly CatalogueRow[] {
  return [
    ...rows.filter(({ before }) => before === null),
    ...rows.filter((row) => row.before !== null && fits(row.before, filter)),
  ];
}

function fits(component: NonNullable<CatalogueRow['before']>, filter: string): boolean {
  const { code, name, kind } = component;
  const text = `${code} ${name} ${kind.replaceAll('-', ' ')}`.toLowerCase();
  return filter
    .toLowerCase()
    .split(/\s+/u)
    .every((word) => text.includes(word));
}
