// A part of a ticket: the gang, where it goes next in the largest type of the screen, and its lines to be counted.
import { type ReactNode, useState } from 'react';
import type { Ticket, TicketPart } from './asked.ts';
import { type CellError, type Column, columns, columnWords, type CountDraft, keyOf } from './count-draft.ts';
import { CountRow } from './count-row.tsx';
import { DestinationForm } from './destination-form.tsx';

export function TicketPartView(props: {
  readonly ticket: Ticket['ticket'];
  readonly part: TicketPart;
  readonly draft: CountDraft;
  readonly errors: readonly CellError[];
  /** One of its cells is counted in. */
  readonly onFocus: () => void;
  readonly onCell: (line: string, column: Column, text: string) => void;
}): ReactNode {
  const { ticket, part, draft, errors } = props;
  const [isChanging, setChanging] = useState(false);
  const isOpen = ticket.state === 'open';
  const isLate = ticket.follows !== null;
  return (
    <section className="strip-part" aria-label={part.title}>
      <h2>{part.title}</h2>
      <p className="strip-next">
        <span>{part.nextWords}</span>
        {isOpen && part.next !== null && !isLate ? (
          <button
            type="button"
            className="quiet"
            aria-expanded={isChanging}
            aria-label={`Change where ${part.title} goes`}
            onClick={() => setChanging(!isChanging)}
          >
            Change
          </button>
        ) : null}
      </p>
      {isOpen && isChanging && part.next !== null ? (
        <DestinationForm ticket={ticket} part={part} next={part.next} onDone={() => setChanging(false)} />
      ) : null}
      {part.expected.length === 0 ? (
        <p className="soft">Nothing is booked to it.</p>
      ) : (
        <div className="table-wrap">
          <table className="plain strip-grid">
            <thead>
              <tr>
                <th scope="col">Component</th>
                <th scope="col" className="numeric">
                  {isLate ? 'Was missing' : 'Expected'}
                </th>
                {columns.map((column) => (
                  <th key={column} scope="col" className="numeric">
                    {columnWords[column]}
                  </th>
                ))}
                <th scope="col">Missing</th>
              </tr>
            </thead>
            <tbody>
              {part.expected.map((line) => {
                const key = keyOf(part.part, line.component);
                return (
                  <CountRow
                    key={key}
                    part={part.part}
                    line={line}
                    isOpen={isOpen}
                    isLate={isLate}
                    cells={draft[key] ?? {}}
                    errors={errors.filter((error) => error.line === key)}
                    onFocus={props.onFocus}
                    onCell={(column, text) => props.onCell(key, column, text)}
                  />
                );
              })}
            </tbody>
          </table>
        </div>
      )}
      {part.extra.length === 0 ? null : (
        <p className="strip-extra-words">
          More than expected:{' '}
          {part.extra
            .map(({ component, counted }) =>
              columns
                .filter((column) => counted[column] !== 0)
                .map((column) => `${counted[column]} ${component} ${columnWords[column]}`)
                .join(', '),
            )
            .join(', ')}
        </p>
      )}
    </section>
  );
}
