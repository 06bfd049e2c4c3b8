// Rows of a spreadsheet into lines: what would be taken is said first, and rows that cannot be read stay in the field
// with why, to be put right.
import { type ReactNode, useId, useMemo } from 'react';
import type { NoteDraftLine } from './note-draft.ts';
import { type KnownCodes, pastedLines } from './pasted-lines.ts';

export function PasteLines(props: {
  readonly text: string;
  readonly known: KnownCodes;
  readonly onText: (text: string) => void;
  readonly onTake: (lines: readonly NoteDraftLine[]) => void;
  readonly onClose: () => void;
}): ReactNode {
  const { text, known } = props;
  const id = useId();
  const read = useMemo(() => pastedLines(text, known, () => crypto.randomUUID()), [text, known]);
  const { lines, bad, left } = read;
  return (
    <section className="paste-lines" aria-label="Lines from a spreadsheet">
      <label htmlFor={id} className="field-label">
        Rows copied from a spreadsheet: component, how many, counted, condition, owner, remark; or any order
        under headings
      </label>
      <textarea
        id={id}
        rows={6}
        value={text}
        aria-invalid={bad.length > 0}
        aria-describedby={`${id}-read`}
        onChange={(event) => props.onText(event.target.value)}
      />
      <div id={`${id}-read`}>
        <output>
          {text.trim() === ''
            ? ''
            : `${count(lines.length, 'line')} read${bad.length === 0 ? '' : `, ${count(bad.length, 'row')} not`}${
                left.length === 0
                  ? '.'
                  : `; left out: ${left.map(({ row, why }) => `row ${row} (${why})`).join(', ')}.`
              }`}
        </output>
        {bad.length === 0 ? null : (
          <ul className="bad-rows">
            {bad.map(({ row, text: cells, why }) => (
              <li key={row} className="field-error">
                Row {row}, “{cells.replaceAll('\t', ' | ')}”: {why}
              </li>
            ))}
          </ul>
        )}
      </div>
      <div className="slip-end">
        <button
          type="button"
          className="primary"
          disabled={lines.length === 0}
          onClick={() => {
            props.onTake(lines);
            // What could not be read stays, as it was pasted.
            props.onText(bad.map((row) => row.text).join('\n'));
            if (bad.length === 0) props.onClose();
          }}
        >
          Add {count(lines.length, 'line')}
        </button>
        <button type="button" className="quiet" onClick={props.onClose}>
          Close
        </button>
      </div>
    </section>
  );
}

function count(many: number, what: string): string {
  return `${many} ${what}${many === 1 ? '' : 's'}`;
}
