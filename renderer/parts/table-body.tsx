// The rows. Up to two hundred are all in the page; of more, only those in view, between two spacers, and
// each says which one it is. On paper all of them.
import type { Row as TableRow } from '@tanstack/react-table';
import { useVirtualizer } from '@tanstack/react-virtual';
import { type KeyboardEvent, type ReactNode, type RefObject, useEffect, useRef, useState } from 'react';
import { useIsPrinting } from './printing.ts';
import { type Column, type features, toTabbed } from './table-columns.ts';

const rowHeight = 27;
const allUpTo = 200;
const overscan = 12;

interface BodyProps<Row extends object> {
  readonly rows: readonly TableRow<typeof features, Row>[];
  readonly columns: readonly Column<Row>[];
  readonly scroller: RefObject<HTMLDivElement | null>;
  readonly selectedKey: string | null;
  readonly onSelect: ((row: Row) => void) | undefined;
  readonly rowClass: ((row: Row) => string | undefined) | undefined;
  readonly empty: ReactNode;
}

export function TableBody<Row extends object>(props: BodyProps<Row>): ReactNode {
  const { rows, columns } = props;
  const [current, setCurrent] = useState(0);
  const wantsFocus = useRef(false);
  const body = useRef<HTMLTableSectionElement>(null);
  const isPrinting = useIsPrinting();
  const many = rows.length > allUpTo && !isPrinting;
  // oxlint-disable-next-line react/incompatible-library -- its functions are used in this component only
  const virtual = useVirtualizer({
    count: many ? rows.length : 0,
    // Where it takes hold of the element it scrolls it to what it has for its offset: only where it draws, and to
    // where the table stands, or the first click into a scrolled table would send it back to the top.
    getScrollElement: () => (many ? props.scroller.current : null),
    initialOffset: () => props.scroller.current?.scrollTop ?? 0,
    estimateSize: () => rowHeight,
    getItemKey: (index) => rows[index]?.id ?? index,
    overscan,
    useFlushSync: false,
  });
  const items = virtual.getVirtualItems();
  const indexes = many ? items.map((item) => item.index) : rows.map((_, index) => index);
  const before = many ? (items[0]?.start ?? 0) : 0;
  const after = many ? virtual.getTotalSize() - (items.at(-1)?.end ?? 0) : 0;
  const at = Math.min(current, rows.length - 1);
  // The row that Tab comes to: the current one, or one in view where that was scrolled out of the page.
  const entry = indexes.includes(at) ? at : (indexes[Math.min(overscan, indexes.length - 1)] ?? at);

  useEffect(() => {
    if (!wantsFocus.current) return;
    const row = body.current?.querySelector<HTMLElement>(`[data-index="${at}"]`);
    if (row === null || row === undefined) return;
    wantsFocus.current = false;
    row.focus();
  });

  // A row chosen by an address or a link may be out of view.
  const { selectedKey } = props;
  const selectedIndex = selectedKey === null ? -1 : rows.findIndex((row) => row.id === selectedKey);
  useEffect(() => {
    if (selectedIndex < 0) return;
    if (many) virtual.scrollToIndex(selectedIndex);
    else body.current?.querySelector(`[data-index="${selectedIndex}"]`)?.scrollIntoView({ block: 'nearest' });
    // Only when another row is chosen: scrolling away from the chosen row must stay possible.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [selectedKey]);

  const moveTo = (index: number): void => {
    const next = Math.max(0, Math.min(rows.length - 1, index));
    wantsFocus.current = true;
    setCurrent(next);
    if (many) virtual.scrollToIndex(next);
  };
  const pressed = (event: KeyboardEvent): void => {
    // A field or button inside a row keeps its own keys.
    if (!(event.target instanceof HTMLTableRowElement)) return;
    const row = rows[at];
    const page = Math.max(1, Math.floor((props.scroller.current?.clientHeight ?? 0) / rowHeight) - 2);
    const to: Record<string, number> = {
      ArrowDown: at + 1,
      ArrowUp: at - 1,
      PageDown: at + page,
      PageUp: at - page,
      Home: 0,
      End: rows.length - 1,
    };
    const target = to[event.key];
    if (target !== undefined) moveTo(target);
    else if ((event.key === 'Enter' || event.key === ' ') && row !== undefined)
      props.onSelect?.(row.original);
    else if (event.key === 'c' && (event.ctrlKey || event.metaKey) && getSelection()?.isCollapsed !== false) {
      const chosen = rows.filter((one) => one.id === props.selectedKey);
      const copied = chosen.length > 0 ? chosen : rows;
      void navigator.clipboard.writeText(
        toTabbed(
          columns,
          copied.map((one) => one.original),
        ),
      );
    } else return;
    event.preventDefault();
  };

  if (rows.length === 0) {
    return (
      <tbody>
        <tr>
          <td className="table-empty" colSpan={columns.length}>
            {props.empty}
          </td>
        </tr>
      </tbody>
    );
  }
  return (
    <tbody ref={body}>
      {before > 0 ? <Spacer height={before} columns={columns.length} /> : null}
      {indexes.map((index) => {
        const row = rows[index];
        if (row === undefined) return null;
        const selected = row.id === props.selectedKey;
        const classes = [props.rowClass?.(row.original), selected ? 'selected' : undefined];
        return (
          <tr
            key={row.id}
            data-index={index}
            aria-rowindex={index + 2}
            aria-selected={props.onSelect === undefined ? undefined : selected}
            tabIndex={index === entry ? 0 : -1}
            className={classes.filter(Boolean).join(' ') || undefined}
            onKeyDown={pressed}
            onFocus={() => setCurrent(index)}
            onClick={() => props.onSelect?.(row.original)}
          >
            {columns.map((column) => (
              <td key={column.id} className={column.numeric === true ? 'numeric' : undefined}>
                {column.show?.(row.original) ?? column.value(row.original)}
              </td>
            ))}
          </tr>
        );
      })}
      {after > 0 ? <Spacer height={after} columns={columns.length} /> : null}
    </tbody>
  );
}

function Spacer(props: { readonly height: number; readonly columns: number }): ReactNode {
  return (
    <tr aria-hidden="true" className="spacer">
      <td colSpan={props.columns} style={{ height: props.height }}>
        {'\u00A0'}
      </td>
    </tr>
  );
}
