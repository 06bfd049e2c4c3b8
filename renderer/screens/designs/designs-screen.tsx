// Every gang design in a list, and beside it the chosen one, whose code stands in the address.
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useSyncExternalStore } from 'react';
import { Link, useLocation, useParams } from 'wouter';
import { useCore } from '../../client/core.tsx';
import { type Column, DataTable } from '../../parts/data-table.tsx';
import { Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { designColumns } from './design-columns.tsx';
import type { DesignSummary } from './design-shapes.ts';
import { DesignView } from './design-view.tsx';
import './designs.css';
import './elevation.css';

export function DesignsScreen(): ReactNode {
  const { code } = useParams<{ code?: string }>();
  const chosen = code === undefined || code === '' ? null : decodeURIComponent(code);
  const [, go] = useLocation();
  const units = useUnits();
  const list = useCore('design.list', {});
  const wide = useWide();
  const narrow = chosen !== null;
  const room = narrow ? (wide ? 'half' : 'narrow') : 'list';
  const withFindings = list.data?.designs.some((row) => row.stops + row.cautions > 0) === true;
  const columns = useMemo<readonly Column<DesignSummary>[]>(
    () => designColumns(units, room, withFindings),
    [units, room, withFindings],
  );
  const open = useCallback((row: DesignSummary) => go(`/designs/${encodeURIComponent(row.code)}`), [go]);

  const pane = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The list is made anew when a design comes beside it: the row that was opened keeps the focus.
    if (room !== 'list' && document.activeElement === document.body)
      pane.current?.querySelector<HTMLElement>('tr.selected')?.focus();
  }, [room]);

  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Taking off the designs …" />;
  if (list.data.designs.length === 0) {
    return (
      <Empty title="No designs yet">
        <p>
          A design is a gang on paper: panels in place, and the take-off that follows from the rule tables.
          <Link href="/designs/new">Design one</Link>, or import designs from a CSV file on the{' '}
          <Link href="/book">Book</Link> screen.
        </p>
      </Empty>
    );
  }
  return (
    <div className={narrow ? 'screen designs with-design' : 'screen designs'}>
      <div className="screen-body">
        <div className="pane design-list" ref={pane}>
          {narrow ? null : (
            <header className="screen-head">
              <h1>Designs</h1>
              <p className="soft">Choose one for its elevation and take-off.</p>
              <NewLinks />
            </header>
          )}
          <DataTable
            key={room}
            caption="Gang designs"
            columns={columns}
            rows={list.data.designs}
            rowKey={rowKey}
            selectedKey={chosen}
            onSelect={open}
            sortBy="code"
            filterLabel="Filter"
            {...(narrow ? { tools: <NewLinks /> } : {})}
          />
        </div>
        {chosen === null ? null : (
          <div className="pane grow design-pane">
            <DesignView code={chosen} />
          </div>
        )}
      </div>
    </div>
  );
}

function NewLinks(): ReactNode {
  return (
    <span className="new-links">
      <Link className="button" href="/designs/new">
        New design
      </Link>
      <Link href="/fill">Fill a wall</Link>
    </span>
  );
}

const wideQuery = '(min-width: 1600px)';

function onWidth(listener: () => void): () => void {
  const media = matchMedia(wideQuery);
  media.addEventListener('change', listener);
  return () => media.removeEventListener('change', listener);
}

/** Whether the window has room for the list's other columns beside a design. */
function useWide(): boolean {
  return useSyncExternalStore(onWidth, () => matchMedia(wideQuery).matches);
}

function rowKey(row: DesignSummary): string {
  return row.code;
}
