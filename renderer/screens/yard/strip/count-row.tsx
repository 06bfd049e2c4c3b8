// A line of the grid: what it is and is taken for, how many should come back, a cell a condition, what the core says is
// missing. Under the line what is wrong with it.
import type { KeyboardEvent, ReactNode } from 'react';
import { FieldError } from '../field.tsx';
import type { TicketLine } from './asked.ts';
import {
  type CellError,
  type Column,
  columns,
  columnWords,
  type CountDraft,
  keyOf,
  missingWords,
} from './count-draft.ts';

export function CountRow(props: {
  readonly part: string;
  readonly line: TicketLine;
  readonly isOpen: boolean;
  readonly isLate: boolean;
  readonly cells: CountDraft[string];
  readonly errors: readonly CellError[];
  readonly onFocus: () => void;
  readonly onCell: (column: Column, text: string) => void;
}): ReactNode {
  const { part, line, isOpen, isLate, cells, errors } = props;
  const { component, name, lookAlike, unbooked, quantity, sought, counted, missing, isCounted } = line;
  return (
    <>
      <tr className={isCounted && missing > 0 ? 'is-short' : ''}>
        <th scope="row">
          <b>{component}</b> <span className="soft">{name}</span>
          {lookAlike === null ? null : <span className="strip-alike">not {lookAlike}</span>}
          {unbooked === 0 ? null : (
            <span className="strip-unbooked">{unbooked} more by the design, nowhere in the book</span>
          )}
        </th>
        <td className="numeric strip-expected">{isLate ? sought : quantity}</td>
        {columns.map((column) => (
          <td key={column} className="numeric">
            {isOpen ? (
              <span className="strip-cell">
                <span className="strip-sum">{counted[column] === 0 ? '' : `${counted[column]} +`}</span>
                <input
                  inputMode="text"
                  autoComplete="off"
                  data-column={column}
                  data-line={keyOf(part, component)}
                  aria-label={`${component} of ${part}, ${columnWords[column]}`}
                  aria-invalid={errors.some((error) => error.column === column)}
                  value={cells?.[column] ?? ''}
                  onFocus={props.onFocus}
                  onChange={(event) => props.onCell(column, event.target.value)}
                  onKeyDown={moveInGrid}
                />
              </span>
            ) : (
              counted[column]
            )}
          </td>
        ))}
        <td className="strip-missing">{missingWords(line, isOpen)}</td>
      </tr>
      {errors.length === 0 ? null : (
        <tr className="line-errors">
          <td colSpan={columns.length + 3}>
            {errors.map((error) => (
              <FieldError
                key={error.column}
                error={{
                  line: null,
                  field: error.column,
                  message: `${columnWords[error.column]}: ${error.message}`,
                  ...(error.hint !== undefined && { hint: error.hint }),
                }}
              />
            ))}
          </td>
        </tr>
      )}
    </>
  );
}

/** Enter and the arrows go up and down a column, through all parts of the ticket. */
function moveInGrid(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.ctrlKey || event.metaKey) return;
  const isUp = event.key === 'ArrowUp' || (event.key === 'Enter' && event.shiftKey);
  const way = isUp ? -1 : event.key === 'ArrowDown' || event.key === 'Enter' ? 1 : 0;
  if (way === 0) return;
  event.preventDefault();
  const cell = event.currentTarget;
  const column = cell.dataset['column'] ?? '';
  const all = cell
    .closest('.strip-parts')
    ?.querySelectorAll<HTMLInputElement>(`input[data-column="${column}"]`);
  const cells = [...(all ?? [])];
  const next = cells[cells.indexOf(cell) + way];
  next?.focus();
  next?.select();
}
