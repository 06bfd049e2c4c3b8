// Rows of a spreadsheet onto the slip: what would be taken is said first, and rows that cannot be read stay in the
// field with why beside them, to be put right. The field is kept while the window is open.
import { type ReactNode, useId, useMemo, useState } from 'react';
import type { DraftLine } from './booking-draft.ts';
import { pastedSlip, type SlipCodes } from './slip-pasted.ts';

let kept = '';

export function SlipPaste(props: {
  readonly known: SlipCodes;
  readonly onTake: (lines: readonly DraftLine[]) => void;
}): ReactNode {
  const { known } = props;
  const id = useId();
  const [text, setText] = useState(kept);
  const [isOpen, setOpen] = useState(kept !== '');
  const read = useMemo(() => pastedSlip(text, known, () => crypto.randomUUID()), [text, known]);
  const change = (next: string): void => {
    kept = next;
    setText(next);
  };
  const { lines, bad, left } = read;
  if (!isOpen)
    return (
      <button type="button" className="quiet" onClick={() => setOpen(true)}>
        Paste from a spreadsheet
      </button>
    );
  return (
    <section className="slip-paste" aria-label="Lines from a spreadsheet">
      <label htmlFor={id} className="field-label">
        Rows copied from a spreadsheet: component, how many, condition, owner, location; or any order under
        headings
      </label>
      <textarea
        id={id}
        rows={5}
        value={text}
        aria-invalid={bad.length > 0}
        aria-describedby={`${id}-read`}
        onChange={(event) => change(event.target.value)}
      />
      <div id={`${id}-read`}>
        <output>{text.trim() === '' ? '' : saidOf(lines.length, bad.length, left)}</output>
        {bad.length === 0 ? null : (
          <ul className="slip-bad-rows">
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
          disabled={lines.length === 0}
          onClick={() => {
            props.onTake(lines);
            // What could not be read stays, as it was pasted.
            change(bad.map((row) => row.text).join('\n'));
            if (bad.length === 0) setOpen(false);
          }}
        >
          Put {lines.length} {lines.length === 1 ? 'line' : 'lines'} on the slip
        </button>
        <button type="button" className="quiet" onClick={() => setOpen(false)}>
          Not now
        </button>
      </div>
    </section>
  );
}

function saidOf(
  read: number,
  bad: number,
  left: readonly { readonly row: number; readonly why: string }[],
): string {
  const unread = bad === 0 ? '' : `, ${bad} ${bad === 1 ? 'row' : 'rows'} not`;
  const out = left.map(({ row, why }) => `row ${row} (${why})`).join(', ');
  return `${read} ${read === 1 ? 'line' : 'lines'} read${unread}${out === '' ? '.' : `; left out: ${out}.`}`;
}
