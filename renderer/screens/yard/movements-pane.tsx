// At the side of the quantities: the movements of one location.
import { type ReactNode, useMemo, useState } from 'react';
import { DataTable } from '../../parts/data-table.tsx';
import { useTimeWords } from '../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { usePlanYear } from './plan-year.ts';
import { MovementDetail } from './movement-detail.tsx';
import { movementClass, movementColumns } from './movement-columns.tsx';
import { PageButtons } from './page-buttons.tsx';
import { SidePane } from './side-pane.tsx';
import { useMovements } from './use-movements.ts';
import type { MovementRow } from './yard-words.ts';

export function MovementsPane(props: { readonly location: string; readonly onClose: () => void }): ReactNode {
  const { location } = props;
  const words = useTimeWords();
  const year = usePlanYear();
  const [chosen, setChosen] = useState<string | null>(null);
  const page = useMovements({ location }, setChosen, 100);
  const columns = useMemo(() => movementColumns(words, page.links, false, year), [words, page.links, year]);
  const row = page.rows.find(({ id }) => id === chosen);
  const title = `at ${location}`;
  return (
    <SidePane title={`Movements ${title}`} onClose={props.onClose}>
      {page.error === null ? null : <RefusalNote error={page.error} />}
      {page.answer === undefined ? (
        <Waiting what="Reading the ledger …" />
      ) : (
        <DataTable
          caption={`Movements ${title}, newest first`}
          columns={columns}
          rows={page.rows}
          rowKey={rowKey}
          selectedKey={chosen}
          onSelect={(movement: MovementRow) => setChosen(movement.id)}
          sortBy="-number"
          tools={<PageButtons page={page} />}
          rowClass={movementClass}
          empty="No movement to it or from it."
        />
      )}
      {row === undefined ? null : (
        <MovementDetail key={row.id} row={row} links={page.links} onClose={() => setChosen(null)} />
      )}
    </SidePane>
  );
}

function rowKey(row: MovementRow): string {
  return row.id;
}
