// The lines of a draft: what the paper says beside what was counted, with what differs. Typing = in the counted
import type { Places } from '../yard-words.ts';
// column takes the paper's figure, and pasted rows of a spreadsheet become lines.
import { type ReactNode, useEffect, useRef } from 'react';
import type { DraftError } from '../booking-draft.ts';
import type { ComponentChoice } from '../component-field.tsx';
import { lineKeys } from './line-keys.ts';
import type { NoteDraft, NoteDraftLine } from './note-draft.ts';
import { NoteLine } from './note-line.tsx';
import { figureWords } from './note-words.ts';

export function NoteLines(props: {
  readonly draft: NoteDraft;
  readonly errors: readonly DraftError[];
  readonly places: Places;
  readonly components: readonly ComponentChoice[];
  readonly onLine: (index: number, part: Partial<NoteDraftLine>) => void;
  readonly onRemove: (index: number) => void;
  readonly onAdd: () => void;
  /** Rows of a spreadsheet pasted over a field. */
  readonly onRows: (text: string) => void;
}): ReactNode {
  const { draft } = props;
  const heads = figureWords(draft.kind);
  const containers = props.places.locations.filter(({ kind }) => kind === 'container');
  const table = useRef<HTMLTableElement>(null);
  const count = draft.lines.length;
  const before = useRef(count);
  useEffect(() => {
    // A line begun from the last one is where typing goes on.
    if (count === before.current + 1)
      table.current
        ?.querySelector<HTMLInputElement>('tr.note-line:last-of-type .component-field input')
        ?.focus();
    before.current = count;
  }, [count]);
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- of the fields inside it
    <table
      className="plain note-lines"
      ref={table}
      onKeyDown={(event) => lineKeys(event, props.onAdd)}
      onPaste={(event) => {
        const text = event.clipboardData.getData('text/plain');
        if (!/[\t\n\r]/u.test(text.trim())) return;
        event.preventDefault();
        props.onRows(text);
      }}
    >
      <thead>
        <tr>
          <th scope="col">Component</th>
          <th scope="col" className="numeric">
            {heads.paper}
          </th>
          <th scope="col" className="numeric">
            {heads.ours}
          </th>
          <th scope="col">Differs</th>
          <th scope="col">Condition</th>
          <th scope="col">Whose</th>
          {containers.length === 0 ? null : <th scope="col">In</th>}
          <th scope="col">Remark</th>
          <th scope="col">
            <span className="visually-hidden">Take the line out</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {draft.lines.map((line, index) => (
          <NoteLine
            key={line.key}
            line={line}
            number={index + 1}
            heads={heads}
            owners={props.places.owners}
            containers={containers}
            errors={props.errors.filter((error) => error.line === index)}
            components={props.components}
            onChange={(part) => props.onLine(index, part)}
            onRemove={() => props.onRemove(index)}
          />
        ))}
      </tbody>
    </table>
  );
}
