// The table of pours. Arrows move from cell to cell, Enter, F2 or a letter begins to edit, Tab takes the text
// and goes on, Ctrl+C copies the cell, Ctrl+V lays cells of a spreadsheet over the table from here on.
import { type ReactNode, useRef } from 'react';
import { pastePours } from './paste-pours.ts';
import { columnIds, pourColumns } from './pour-columns.ts';
import { PourTableRow } from './pour-row.tsx';
import type { CellContext, PourRow } from './pour-shapes.ts';
import { useCellFocus } from './use-cell-focus.ts';
import type { PourEdits } from './use-pour-edits.ts';

const tableWidthPx = pourColumns.reduce((sum, column) => sum + column.widthPx, 0);

export function PourGrid(props: {
  readonly rows: readonly PourRow[];
  readonly context: CellContext;
  readonly chosen: string | null;
  readonly edits: PourEdits;
  readonly onChoose: (code: string) => void;
  readonly onSay: (words: string) => void;
}): ReactNode {
  const { rows, context, edits, onChoose, onSay } = props;
  const index = rows.findIndex((row) => row.pour.code === props.chosen);
  const at = Math.max(0, index);
  const scroller = useRef<HTMLDivElement>(null);
  const { focus, focusCell, edit, end, pressed } = useCellFocus(
    { rows, at, context, edits, onChoose },
    scroller,
  );
  const paste = async (text: string): Promise<void> =>
    onSay(await pastePours(text, rows.slice(at), columnIds.indexOf(focus.column), context, edits));

  return (
    <div className="table-scroll pour-scroll" ref={scroller}>
      <table
        className="pour-table"
        style={{ width: tableWidthPx }}
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-to-interactive-role -- cells take keys
        role="grid"
        aria-label="Pours in their sequence"
        aria-rowcount={rows.length + 1}
        onKeyDown={pressed}
        onPaste={(event) => {
          if (focus.editing !== null) return;
          event.preventDefault();
          void paste(event.clipboardData.getData('text/plain'));
        }}
      >
        <GridHead />
        <tbody>
          {rows.map((row, rowIndex) => (
            <PourTableRow
              key={row.pour.code}
              row={row}
              index={rowIndex}
              context={context}
              chosen={row.pour.code === props.chosen}
              focused={rowIndex === at ? focus.column : null}
              editing={rowIndex === at ? focus.editing : null}
              wantsFocus={focus.wanted}
              drafts={edits.drafts}
              onFocus={focusCell}
              onEdit={edit}
              onEnd={rowIndex === at ? end : nothing}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function nothing(): void {
  // Rows without the focused cell never end an edit.
}

function GridHead(): ReactNode {
  return (
    <>
      <colgroup>
        {pourColumns.map((one) => (
          // What is over goes to the name.
          <col key={one.id} width={one.id === 'name' ? undefined : one.widthPx} />
        ))}
      </colgroup>
      <thead>
        <tr aria-rowindex={1}>
          {pourColumns.map((one) => (
            <th
              key={one.id}
              scope="col"
              title={one.words}
              className={one.numeric === true ? 'numeric' : undefined}
            >
              {one.header}
            </th>
          ))}
        </tr>
      </thead>
    </>
  );
}
