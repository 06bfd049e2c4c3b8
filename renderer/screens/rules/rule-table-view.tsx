// One rule table: what it does in a sentence, its numbers each with its source, its rows.
import type { ReactNode } from 'react';
import type { RuleTables } from '../../../core/catalogue/rules.ts';
import { useUnits } from '../../parts/units.tsx';
import { unitOf } from './cell-kinds.ts';
import { addTable, removeTable } from './draft-edits.ts';
import type { DraftEdits } from './draft-store.ts';
import { FieldsGrid } from './fields-grid.tsx';
import { ProblemList } from './problem-list.tsx';
import { problemsAtNoCell, problemsOf } from './problem-places.ts';
import { RowsGrid } from './rows-grid.tsx';
import type { Problem } from './rules-draft.ts';
import type { TableForm } from './table-forms.ts';

export interface TableProps {
  readonly form: TableForm;
  readonly edits: DraftEdits;
  /** What the book has, which changed cells tell beside them. */
  readonly before: RuleTables;
  readonly problems: readonly Problem[];
}

export function RuleTableView(props: TableProps): ReactNode {
  const { form, edits } = props;
  const { draft, change } = edits;
  const { system } = useUnits();
  const has = draft.tables.has(form.name);
  const groups = [...new Set(form.fields.map(({ group }) => group))];
  const cells = new Set(form.fields.map(({ place }) => place));
  for (const { place, columns } of form.rows)
    (draft.rows[place] ?? []).forEach((_, index) =>
      columns.forEach(({ name }) => cells.add(`${place}[${index}].${name}`)),
    );
  const words = form.words.toLowerCase();
  return (
    <section className="rule-table" aria-labelledby="rule-table-head">
      <div className="rule-table-head">
        <h2 id="rule-table-head">{form.words}</h2>
        {has ? (
          <button
            type="button"
            className="quiet"
            onClick={() => change(`table ${words} taken out`, (old) => removeTable(old, form.name))}
          >
            Take this table out
          </button>
        ) : null}
      </div>
      <p className="rule-about">{form.about}</p>
      {has ? (
        <>
          <ProblemList problems={problemsAtNoCell(problemsOf(props.problems, form.name), cells)} />
          {groups.map((group, index) => (
            <div key={group}>
              {group === '' ? null : <h3 className="rule-group">{group}</h3>}
              <FieldsGrid
                {...props}
                label={group === '' ? form.words : group}
                fields={form.fields.filter((field) => field.group === group)}
              />
              {index === 0
                ? form.rows.map((rows) => <RowsGrid key={rows.place} {...props} rows={rows} />)
                : null}
            </div>
          ))}
          <p className="soft rule-hint off-paper">
            A length without a unit is taken as {system === 'us' ? 'inches' : 'millimetres'}, a weight as{' '}
            {unitOf({ as: 'weight' }, system)}. Empty cells show what holds then. A source that is not given
            is told as <em>default</em>.{' '}
            {form.rows.length === 0 ? null : (
              <>
                <kbd>Ctrl+Delete</kbd> takes a row out.
              </>
            )}
          </p>
        </>
      ) : (
        <div className="rule-absent">
          <p>This system has no such table: nothing of it is taken off.</p>
          <button
            type="button"
            onClick={() => change(`table ${words} added`, (old) => addTable(old, form.name))}
          >
            Add this table
          </button>
        </div>
      )}
    </section>
  );
}
