// Over the table: filter, add a copy of the chosen pour under a code of its own, remove, copy the table.
import { type ReactNode, useState } from 'react';
import { columnIds, columnText, pourColumns } from './pour-columns.ts';
import type { CellContext, PourRow } from './pour-shapes.ts';
import { nextCode } from './pour-words.ts';
import type { PourEdits } from './use-pour-edits.ts';

export function PourTools(props: {
  readonly rows: readonly PourRow[];
  readonly count: number;
  readonly codes: readonly string[];
  readonly row: PourRow | undefined;
  readonly context: CellContext;
  readonly filter: string;
  readonly onFilter: (filter: string) => void;
  readonly edits: PourEdits;
  readonly onChoose: (code: string) => void;
  readonly onSay: (words: string) => void;
  /** Pours without a date. */
  readonly undated: number;
  readonly onPlace: () => void;
}): ReactNode {
  const { rows, count, row, edits } = props;
  const copyTable = (): void => {
    void navigator.clipboard
      .writeText(asTabbed(rows, props.context))
      .then(() => props.onSay(`${rows.length} pours copied; paste them into a spreadsheet.`));
  };
  const remove = async ({ pour }: PourRow): Promise<void> => {
    if (await edits.remove(pour.code)) props.onSay(`${pour.code} removed. Ctrl+Z puts it back.`);
  };
  return (
    <>
      <label className="table-filter">
        <span>Filter</span>
        <input type="search" value={props.filter} onChange={(event) => props.onFilter(event.target.value)} />
      </label>
      <output className="soft">
        {rows.length === count ? `${count} pours` : `${rows.length} of ${count} pours`}
      </output>
      <span className="pour-actions">
        {props.undated === 0 ? null : (
          <button type="button" onClick={props.onPlace}>
            Place {props.undated} {props.undated === 1 ? 'pour' : 'pours'} without date
          </button>
        )}
        <button type="button" className="quiet" onClick={copyTable}>
          Copy table
        </button>
        {row === undefined ? null : (
          <>
            <AddCopy key={row.pour.code} {...props} row={row} />
            <button type="button" disabled={edits.busy} onClick={() => void remove(row)}>
              Remove {row.pour.code}
            </button>
          </>
        )}
      </span>
    </>
  );
}

function AddCopy(props: {
  readonly codes: readonly string[];
  readonly row: PourRow;
  readonly edits: PourEdits;
  readonly onChoose: (code: string) => void;
  readonly onSay: (words: string) => void;
}): ReactNode {
  const { row, codes, edits } = props;
  const [code, setCode] = useState(() => nextCode(row.pour.code, new Set(codes)));
  const taken = codes.includes(code.trim());
  const add = async (): Promise<void> => {
    const gates = row.pour.gates.map((gate) => ({ ...gate, done: false }));
    const copy = { ...row.pour, code: code.trim(), gates };
    const words = `${copy.code} added as a copy of ${row.pour.code}`;
    if (!(await edits.add(copy, words))) return;
    props.onChoose(copy.code);
    props.onSay(`${words}, at the same dates. Ctrl+Z takes it out.`);
  };
  return (
    <form
      className="add-copy"
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <label>
        <span className="soft">Copy {row.pour.code} as</span>{' '}
        <input
          value={code}
          maxLength={40}
          aria-invalid={taken}
          aria-describedby={taken ? 'code-taken' : undefined}
          onChange={(event) => setCode(event.target.value)}
        />
      </label>
      <button type="submit" className="primary" disabled={taken || code.trim() === '' || edits.busy}>
        Add
      </button>
      {taken ? (
        <span id="code-taken" className="field-error">
          {code.trim()} is there already
        </span>
      ) : null}
    </form>
  );
}

function asTabbed(rows: readonly PourRow[], context: CellContext): string {
  return [
    pourColumns.map(({ header }) => header).join('\t'),
    ...rows.map((row) =>
      columnIds.map((id) => columnText(row, id, context).replaceAll(/\s+/gu, ' ')).join('\t'),
    ),
  ].join('\n');
}
