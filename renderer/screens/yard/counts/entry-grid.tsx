// Entering what was found, by place in shelf order, by keyboard: Enter and the arrows go down a column, Tab across.
// A code typed or scanned into the field above goes to its line. What was entered before stands in the cell; typing
// over it is a recount.
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { readScanCode } from '../../../../core/yard/scan-code.ts';
import { type Output, useCommand } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import { useWindowKeys } from '../../../parts/window-keys.ts';
import { WhenField } from '../when-field.tsx';
import { conditionWords } from '../yard-words.ts';
import { AnotherLine } from './another-line.tsx';
import { columns, type EntryDraft, keyOf, readEntry, type ReadLine, withCell } from './entry-draft.ts';
import { EntryRow } from './entry-row.tsx';
import { useKeptTyping } from './kept-typing.ts';

const nothing: EntryDraft = {};
const noLines: readonly ReadLine[] = [];

export function EntryGrid(props: {
  readonly id: string;
  readonly counter: 1 | 2;
  readonly read: Output<'count.read'>;
}): ReactNode {
  const { id, counter, read } = props;
  const [draft, edit] = useKeptTyping(`${id} ${counter}`, nothing);
  const [added, setAdded] = useKeptTyping(`${id} added`, noLines);
  const [at, setAt] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const enter = useCommand('count.enter');
  const [query, change] = useAddressQuery();
  const grid = useRef<HTMLDivElement>(null);
  const known = new Set(read.lines.map(keyOf));
  const lines = [...read.lines, ...added.filter((line) => !known.has(keyOf(line)))];
  const typed = readEntry(lines, draft);
  const isOpen = read.count.state === 'open';
  const keep = (): void => {
    if (!isOpen || enter.isPending || typed.errors.length > 0 || typed.lines.length === 0) return;
    enter.mutate(
      { count: id, id: crypto.randomUUID(), counter, lines: typed.lines, ...(at !== null && { at }) },
      {
        onSuccess: (done) => {
          setSaid(`Entered: ${done.lines} ${done.lines === 1 ? 'line' : 'lines'}.`);
          edit((old) => Object.fromEntries(Object.entries(old).filter(([key]) => !typed.keys.includes(key))));
        },
      },
    );
  };
  const goTo = (key: string): boolean => focusLine(grid.current, key);
  // A line to be counted again is gone to when the grid opens.
  const first = useRef(query.get('line'));
  useEffect(() => {
    if (first.current !== null) focusLine(grid.current, first.current);
  }, []);
  useWindowKeys((event) => {
    if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    keep();
  });
  const isDone = read.count.counted === read.count.lines;
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <div className="table-tools entry-tools">
        <GoToLine lines={lines} onGo={goTo} />
        <WhenField label="Counted at" placeholder="now" value={at} onChange={setAt} />
        <button type="submit" className="primary" disabled={!isOpen || typed.lines.length === 0}>
          Enter {typed.keys.length === 0 ? 'lines' : typed.keys.length}
          {typed.keys.length === 0 ? '' : typed.keys.length === 1 ? ' line' : ' lines'} <kbd>Ctrl+Enter</kbd>
        </button>
        <output className="soft">{said}</output>
        {isDone ? (
          <button type="button" onClick={() => change({ do: 'differences' }, { step: true })}>
            See the differences
          </button>
        ) : null}
        <span className="soft entry-hint">61 · 40 + 6 · 12 x 20 · 61 + ~20 for a bag not opened</span>
      </div>
      {enter.error === null ? null : <RefusalNote error={enter.error} />}
      {isOpen ? null : (
        <p className="counts-accuracy">
          Count {read.count.name} is {read.count.state}: nothing more is entered on it.
        </p>
      )}
      <div className="table-scroll" ref={grid}>
        {read.places.map((place) => (
          <table key={place.code} className="plain entry-grid">
            <caption>
              <b>{place.code}</b> {place.name}
            </caption>
            <thead>
              <tr>
                <th scope="col">Component</th>
                <th scope="col" className="numeric">
                  Book
                </th>
                {columns.map((column) => (
                  <th key={column} scope="col" className="numeric">
                    {column === 'ready-hidden' ? 'hidden faces only' : conditionWords[column]}
                  </th>
                ))}
                <th scope="col">Entered</th>
              </tr>
            </thead>
            <tbody>
              {lines
                .filter((line) => line.location === place.code)
                .map((line) => (
                  <EntryRow
                    key={keyOf(line)}
                    line={line}
                    counter={counter}
                    isOpen={isOpen}
                    cells={draft[keyOf(line)] ?? {}}
                    errors={typed.errors.filter((error) => error.line === keyOf(line))}
                    onCell={(column, text) => {
                      setSaid('');
                      enter.reset();
                      edit((old) => withCell(old, keyOf(line), column, text));
                    }}
                  />
                ))}
            </tbody>
          </table>
        ))}
        {read.count.kind === 'location' && isOpen ? (
          <AnotherLine
            places={read.places}
            lines={lines}
            onAdd={(line) => setAdded((old) => [...old, line])}
          />
        ) : null}
      </div>
    </form>
  );
}

function focusLine(grid: HTMLElement | null, key: string): boolean {
  const cell = grid?.querySelector<HTMLInputElement>(`[data-line="${CSS.escape(key)}"]`);
  cell?.focus();
  cell?.select();
  return cell !== null && cell !== undefined;
}

/** A component typed or scanned: its first line takes the focus. */
function GoToLine(props: {
  readonly lines: readonly ReadLine[];
  readonly onGo: (key: string) => boolean;
}): ReactNode {
  const [text, setText] = useState('');
  const [refusal, setRefusal] = useState<string | null>(null);
  const go = (): void => {
    const scanned = readScanCode(text);
    const code = scanned.ok && scanned.value.kind === 'component' ? scanned.value.code : text.trim();
    const line = props.lines.find((each) => each.component.toLowerCase() === code.toLowerCase());
    if (line !== undefined && props.onGo(keyOf(line))) {
      setText('');
      setRefusal(null);
    } else setRefusal(`${code} is not on this count.`);
  };
  return (
    <span className="when-field">
      <label className="table-filter">
        <span>Go to</span>
        <input
          className="go-to"
          placeholder="type or scan a component"
          value={text}
          aria-invalid={refusal !== null}
          onChange={(event) => {
            setText(event.target.value);
            setRefusal(null);
          }}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || event.ctrlKey || event.metaKey) return;
            event.preventDefault();
            if (text.trim() !== '') go();
          }}
        />
      </label>
      {refusal === null ? null : (
        <span className="field-error" role="alert">
          {refusal}
        </span>
      )}
    </span>
  );
}
