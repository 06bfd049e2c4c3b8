// One pour in the table. Only the cell that has the focus is in the tab order; a refused text stands in its
// cell with the reason under it.
import { memo, type ReactNode, useEffect, useRef } from 'react';
import { CellEditor } from './cell-editor.tsx';
import { type CellDrafts, draftKey } from './cell-drafts.ts';
import { cellWords, isCellId } from './pour-cells.ts';
import { columnText, pourColumns } from './pour-columns.ts';
import type { CellContext, PourRow } from './pour-shapes.ts';
import type { EditEnd } from './use-cell-focus.ts';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';

export interface RowProps {
  readonly row: PourRow;
  readonly index: number;
  readonly context: CellContext;
  readonly chosen: boolean;
  /** Column of the focused cell where it is in this row. */
  readonly focused: string | null;
  /** Text with which editing began, where the focused cell is being edited. */
  readonly editing: string | null;
  readonly wantsFocus: boolean;
  readonly drafts: CellDrafts;
  readonly onFocus: (index: number, column: string) => void;
  readonly onEdit: (index: number, column: string) => void;
  readonly onEnd: EditEnd;
}

export const PourTableRow = memo(function PourTableRow(props: RowProps): ReactNode {
  return (
    <tr className={rowClass(props)} aria-rowindex={props.index + 2}>
      {pourColumns.map((column) => (
        <PourCell key={column.id} {...props} column={column} />
      ))}
    </tr>
  );
});

function rowClass({ chosen, row }: RowProps): string | undefined {
  const classes = [chosen ? 'selected' : '', row.dateOpen ? 'undated' : ''].filter(Boolean);
  return classes.length === 0 ? undefined : classes.join(' ');
}

function PourCell(props: RowProps & { readonly column: (typeof pourColumns)[number] }): ReactNode {
  const { row, column, context } = props;
  const focused = props.focused === column.id;
  const cell = useRef<HTMLTableCellElement>(null);
  const editable = isCellId(column.id);
  const draft = props.drafts.get(draftKey(row.pour.code, column.id));
  const why = draft?.message ?? null;
  const text = draft?.text ?? columnText(row, column.id, context);
  const editing = focused && editable && props.editing !== null;
  const whyId = `why-${row.pour.code}-${column.id}`;
  useEffect(() => {
    if (!focused || !props.wantsFocus || editing) return;
    // Only within the table: a filter being typed must not lose the focus to a row that moved up.
    const active = document.activeElement;
    if (active === document.body || cell.current?.closest('table')?.contains(active) === true)
      cell.current?.focus();
  }, [focused, props.wantsFocus, editing]);
  const classes = [
    column.numeric === true ? 'numeric' : undefined,
    editable ? 'editable' : 'follows',
    why === null ? undefined : 'refused',
    column.id === 'findings' ? findingClass(row) : undefined,
    column.id === 'gates' && text !== '' ? 'gates-open' : undefined,
  ];
  return (
    <td
      ref={cell}
      className={classes.filter(Boolean).join(' ')}
      tabIndex={focused ? 0 : -1}
      title={text}
      aria-readonly={!editable}
      aria-invalid={why === null ? undefined : true}
      aria-busy={draft !== undefined && why === null ? true : undefined}
      aria-describedby={why === null ? undefined : whyId}
      onFocus={(event) => {
        if (event.target === cell.current) props.onFocus(props.index, column.id);
      }}
      onDoubleClick={() => {
        if (editable) props.onEdit(props.index, column.id);
      }}
    >
      {editing ? (
        <CellEditor
          label={`${row.pour.code}, ${isCellId(column.id) ? cellWords[column.id] : column.header}`}
          begin={props.editing ?? text}
          whole={props.editing === ''}
          text={text}
          onEnd={props.onEnd}
        />
      ) : (
        text
      )}
      {why === null ? null : (
        <span id={whyId} className={focused ? 'cell-why' : 'visually-hidden'} role="alert">
          {withSpokenInstants(why, context.timeZone)} {draft?.hint}
        </span>
      )}
    </td>
  );
}

function findingClass(row: PourRow): string | undefined {
  if (row.findings.some(({ severity }) => severity === 'stop')) return 'short-word';
  return row.findings.some(({ severity }) => severity === 'caution') ? 'caution-word-ink' : undefined;
}
