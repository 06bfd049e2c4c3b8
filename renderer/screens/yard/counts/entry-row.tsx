// A line of the grid: what it is and looks like, the booked figure where it may be seen, a cell a condition.
import type { KeyboardEvent, ReactNode } from 'react';
import { sumOf } from '../../../../core/yard/count-figures.ts';
import { conditionWords } from '../yard-words.ts';
import { FieldError } from '../field.tsx';
import {
  type CellError,
  type Column,
  columns,
  type EntryDraft,
  keyOf,
  type ReadLine,
} from './entry-draft.ts';

export function EntryRow(props: {
  readonly line: ReadLine;
  readonly counter: 1 | 2;
  readonly isOpen: boolean;
  readonly cells: EntryDraft[string];
  readonly errors: readonly CellError[];
  readonly onCell: (column: Column, text: string) => void;
}): ReactNode {
  const { line, counter, cells, errors } = props;
  const mine = line.figures.find((figure) => figure.counter === counter);
  return (
    <>
      <tr className={mine === undefined ? '' : 'is-entered'}>
        <th scope="row">
          <b>{line.component}</b> <span className="soft">{line.name}</span>
          {line.owner === null ? null : <span className="soft"> of {line.owner}</span>}
          {line.lookAlikes.length === 0 ? null : (
            <span className="look-alike-word"> not {line.lookAlikes.join(', ')}</span>
          )}
          {line.bundleSize === null ? null : <span className="soft"> · {line.bundleSize} a bundle</span>}
        </th>
        <td className="numeric">
          {line.booked === null ? <span className="soft">blind</span> : sumOf(line.booked)}
        </td>
        {columns.map((column, index) => (
          <td key={column} className="numeric">
            <input
              className="count-cell"
              data-column={column}
              {...(index === 0 && { 'data-line': keyOf(line) })}
              aria-label={`${line.component} at ${line.location}, ${conditionWords[column]}`}
              aria-invalid={errors.some((error) => error.column === column)}
              disabled={!props.isOpen}
              placeholder={mine?.byCondition[column] === undefined ? '' : String(mine.byCondition[column])}
              value={cells?.[column] ?? ''}
              onChange={(event) => props.onCell(column, event.target.value)}
              onKeyDown={moveInColumn}
            />
          </td>
        ))}
        <td>
          {mine === undefined ? (
            <span className="soft">{line.entered.length > 0 ? 'by the other counter' : ''}</span>
          ) : (
            <>
              {mine.quantity}
              {mine.uncertainty > 0 ? ` ± ${mine.uncertainty}` : ''}{' '}
              <span className="soft">
                by {mine.who}
                {mine.recounts > 0 ? `, counted ${mine.recounts + 1} times` : ''}
                {mine.notes.length > 0 ? ` (${mine.notes.join('; ')})` : ''}
              </span>
            </>
          )}
        </td>
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
                  message: `${conditionWords[error.column]}: ${error.message}`,
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

/** Up and down within a column, from one place to the next too. */
function moveInColumn(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.ctrlKey || event.metaKey) return;
  const way = event.key === 'ArrowUp' ? -1 : event.key === 'ArrowDown' || event.key === 'Enter' ? 1 : 0;
  const cell = event.currentTarget;
  const column = cell.dataset['column'] ?? '';
  if (way === 0) return;
  event.preventDefault();
  const all = cell
    .closest('.table-scroll')
    ?.querySelectorAll<HTMLInputElement>(`input[data-column="${column}"]`);
  const cells = [...(all ?? [])];
  const next = cells[cells.indexOf(cell) + way];
  next?.focus();
  next?.select();
}
