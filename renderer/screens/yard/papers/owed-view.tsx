// What is owed to each supplier, now or at any moment: received less returned, and where those pieces are; under it
// what is still claimed because two ends of a note counted differently.
import type { ReactNode } from 'react';
import { useLocation } from 'wouter';
import { groupDigits } from '../../../../core/units/weight.ts';
import { type Output, useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { WhenField } from '../when-field.tsx';
import { type Claim, claimWords, noteAddress } from './note-words.ts';

type OwedRow = Output<'yard.owed'>['rows'][number];

export function OwedView(): ReactNode {
  const [query, change] = useAddressQuery();
  const at = query.get('at');
  const owed = useCore('yard.owed', at === null ? {} : { at });
  const words = useTimeWords();
  const [, navigate] = useLocation();
  if (owed.error !== null) return <RefusalNote error={owed.error} />;
  if (owed.data === undefined) return <Waiting what="Adding up the ledger …" />;
  const { rows, claims } = owed.data;
  return (
    <div className="pane grow yard-main">
      {at === null ? null : (
        <p className="note note-caution">
          <span className="note-word">As of {words.full(at)}</span>
          <span>Movements after that moment are left out; claims are those open now.</span>
        </p>
      )}
      <DataTable
        caption="Owed to suppliers"
        columns={owedColumns}
        rows={rows}
        rowKey={owedKey}
        filterLabel="Filter"
        tools={
          <WhenField
            label="At"
            placeholder="as booked now"
            value={at}
            onChange={(next) => change({ at: next })}
          />
        }
        empty={
          <Empty title="Nothing is owed">
            <p>What a delivery or hire-on note brings from a supplier is owed until it is back.</p>
          </Empty>
        }
      />
      <section className="claims-part" aria-label="Open claims">
        <h2 className="part-head">Open claims</h2>
        {claims.length === 0 ? (
          <p className="soft papers-line">None: no note has two ends that counted differently.</p>
        ) : (
          <DataTable
            caption="Open claims"
            columns={claimColumns}
            rows={claims}
            rowKey={claimKey}
            onSelect={(claim: Claim) => navigate(noteAddress(claim.note))}
          />
        )}
      </section>
    </div>
  );
}

function owedKey(row: OwedRow): string {
  return `${row.owner} ${row.component}`;
}

function claimKey(claim: Claim): string {
  return `${claim.note} ${claim.component} ${claim.owner} ${claim.theirs} ${claim.ours}`;
}

function pieces(
  id: keyof OwedRow &
    ('received' | 'returned' | 'owed' | 'ready' | 'notReady' | 'away' | 'scrapped' | 'lost'),
  header: string,
  width = 84,
): Column<OwedRow> {
  return {
    id,
    header,
    numeric: true,
    value: (row) => row[id],
    show: (row) => {
      if (row[id] === 0 && id !== 'owed') return '';
      const text = groupDigits(String(row[id]));
      return id === 'owed' ? <strong>{text}</strong> : text;
    },
    width,
  };
}

const owedColumns: readonly Column<OwedRow>[] = [
  { id: 'owner', header: 'Supplier', value: (row) => row.owner, width: 90 },
  { id: 'ownerName', header: 'Name', value: (row) => row.ownerName, width: 150 },
  { id: 'component', header: 'Component', value: (row) => row.component, width: 104 },
  { id: 'name', header: 'Called', value: (row) => row.name, width: 180 },
  pieces('received', 'Received'),
  pieces('returned', 'Returned'),
  pieces('owed', 'Owed'),
  pieces('ready', 'ready', 70),
  pieces('notReady', 'not ready', 84),
  pieces('away', 'repair, other jobs', 126),
  pieces('scrapped', 'scrapped'),
  pieces('lost', 'lost', 64),
];

const claimColumns: readonly Column<Claim>[] = [
  { id: 'number', header: 'Note', value: (row) => row.number, width: 100 },
  { id: 'owner', header: 'Supplier', value: (row) => row.owner, width: 90 },
  { id: 'component', header: 'Component', value: (row) => row.component, width: 104 },
  { id: 'theirs', header: 'They say', numeric: true, value: (row) => row.theirs, width: 90 },
  { id: 'ours', header: 'We counted', numeric: true, value: (row) => row.ours, width: 90 },
  { id: 'disputed', header: 'Disputed', numeric: true, value: (row) => row.disputed, width: 84 },
  { id: 'words', header: 'In words', value: claimWords, width: 360 },
];
