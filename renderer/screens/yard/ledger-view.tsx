// The whole ledger, newest first; an entry is opened at the side, where it can be reversed.
import { type ReactNode, useCallback, useMemo } from 'react';
import { useAddressQuery } from '../../client/query.ts';
import { DataTable } from '../../parts/data-table.tsx';
import { useTimeWords } from '../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { MovementDetail } from './movement-detail.tsx';
import { movementClass, movementColumns } from './movement-columns.tsx';
import { PageButtons } from './page-buttons.tsx';
import { useMovements } from './use-movements.ts';
import type { MovementRow } from './yard-words.ts';

export function LedgerView(): ReactNode {
  const [query, change] = useAddressQuery();
  const chosen = query.get('movement');
  const go = useCallback((id: string | null) => change({ movement: id }), [change]);
  const words = useTimeWords();
  const page = useMovements({}, go, 200);
  const columns = useMemo(() => movementColumns(words, page.links, false), [words, page.links]);
  if (page.error !== null) return <RefusalNote error={page.error} />;
  if (page.answer === undefined) return <Waiting what="Reading the ledger …" />;
  const row = page.rows.find(({ id }) => id === chosen);
  return (
    <div className="ledger">
      <DataTable
        caption="Movements, newest first"
        columns={columns}
        rows={page.rows}
        rowKey={rowKey}
        selectedKey={chosen}
        onSelect={(movement: MovementRow) => go(movement.id)}
        sortBy="-number"
        filterLabel="Filter"
        tools={<PageButtons page={page} />}
        rowClass={movementClass}
        empty="No movement is booked yet."
      />
      {row === undefined ? null : (
        <MovementDetail key={row.id} row={row} links={page.links} onClose={() => go(null)} />
      )}
    </div>
  );
}

function rowKey(row: MovementRow): string {
  return row.id;
}
