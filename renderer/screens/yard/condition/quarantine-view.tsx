// Pieces set apart, since when and why; taken back with what was found.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { useLiveNow } from '../../../parts/live-now.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { SidePane } from '../side-pane.tsx';
import type { ApartRow } from './care-words.ts';
import { ApartForm } from './apart-form.tsx';

export function QuarantineView(props: { readonly adding: boolean; readonly onClose: () => void }): ReactNode {
  const job = useJob();
  const care = useCore('yard.care', { job: job.code, ...useLiveNow(job.code) });
  const words = useTimeWords();
  const columns = useMemo(() => columnsOf(words), [words]);
  const [query, change] = useAddressQuery();
  const chosen = query.get('line');
  if (care.error !== null) return <RefusalNote error={care.error} />;
  if (care.data === undefined) return <Waiting what="Looking for what is set apart …" />;
  const row = care.data.quarantine.find((each) => keyOf(each) === chosen);
  return (
    <>
      <div className="pane grow yard-main">
        <DataTable
          caption="Pieces set apart"
          columns={columns}
          rows={care.data.quarantine}
          rowKey={keyOf}
          selectedKey={chosen}
          onSelect={(each: ApartRow) =>
            change({ line: keyOf(each) === chosen ? null : keyOf(each), add: null })
          }
          filterLabel="Filter"
          empty={
            <Empty title="Nothing is set apart">
              <p>
                Pieces that nobody may use until somebody has looked at them stand here.{' '}
                <button type="button" onClick={() => change({ add: 'open', line: null })}>
                  Set pieces apart
                </button>
              </p>
            </Empty>
          }
        />
      </div>
      {props.adding ? (
        <SidePane title="Set pieces apart" onClose={props.onClose}>
          <ApartForm row={null} onDone={props.onClose} />
        </SidePane>
      ) : null}
      {!props.adding && row !== undefined ? (
        <SidePane
          key={keyOf(row)}
          title={`Take back ${row.component} at ${row.location}`}
          onClose={props.onClose}
        >
          <p className="side-words soft">
            {row.quantity} {row.name}, of {row.owner}
            {row.since === null ? '' : `, since ${words.full(row.since)}`}
            {row.why === null ? '' : `: ${row.why}`}
          </p>
          <ApartForm row={row} onDone={props.onClose} />
        </SidePane>
      ) : null}
    </>
  );
}

function keyOf(row: ApartRow): string {
  return [row.component, row.owner, row.location, row.since ?? '', row.why ?? ''].join(' ');
}

function columnsOf(words: TimeWords): readonly Column<ApartRow>[] {
  return [
    {
      id: 'component',
      header: 'Component',
      value: (row) => row.component,
      show: (row) => <b>{row.component}</b>,
      width: 120,
    },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 190 },
    { id: 'quantity', header: 'Pieces', value: (row) => row.quantity, numeric: true, width: 80 },
    { id: 'location', header: 'Where', value: (row) => row.location, width: 110 },
    { id: 'owner', header: 'Owner', value: (row) => row.owner, width: 90 },
    {
      id: 'since',
      header: 'Since',
      value: (row) => row.since ?? '',
      show: (row) => (row.since === null ? 'long ago' : words.full(row.since)),
      text: (row) => (row.since === null ? 'long ago' : words.full(row.since)),
      width: 150,
    },
    { id: 'why', header: 'Why', value: (row) => row.why ?? '', width: 260 },
  ];
}
