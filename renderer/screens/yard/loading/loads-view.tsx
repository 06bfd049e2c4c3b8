// The loads that were kept: which truck, which note, how heavy, when it leaves, who tied it down.
import { type ReactNode, useMemo } from 'react';
import { go } from '../../../client/address.ts';
import { type Output, useCore } from '../../../client/core.tsx';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { type Units, useUnits } from '../../../parts/units.tsx';
import { shareWords } from './loading-words.ts';

type LoadRow = Output<'load.list'>['loads'][number];

export function LoadsView(): ReactNode {
  const list = useCore('load.list', {});
  const words = useTimeWords();
  const units = useUnits();
  const columns = useMemo(() => columnsOf(words, units), [words, units]);
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the loads …" />;
  return (
    <div className="pane grow yard-main">
      <DataTable
        caption="Loads"
        columns={columns}
        rows={list.data.loads}
        rowKey={idOf}
        onSelect={(row: LoadRow) => go(`/yard/loading/${encodeURIComponent(row.load)}`)}
        sortBy="-leaves"
        filterLabel="Filter"
        empty={
          <Empty title="No load is kept yet">
            <p>
              What goes on which truck, and how it stands there: last on, first off.{' '}
              <button type="button" onClick={() => go('/yard/loading?show=make')}>
                Make loads
              </button>
            </p>
          </Empty>
        }
      />
    </div>
  );
}

function idOf({ load }: LoadRow): string {
  return load;
}

function columnsOf(words: TimeWords, units: Units): readonly Column<LoadRow>[] {
  return [
    { id: 'truck', header: 'Truck', value: (row) => `${row.truck} ${row.truckName}`, width: 200 },
    { id: 'note', header: 'Note', value: (row) => row.number ?? '', width: 100 },
    { id: 'stacks', header: 'Stacks', numeric: true, value: (row) => row.stacks, width: 74 },
    { id: 'stops', header: 'Stops', numeric: true, value: (row) => row.stops, width: 70 },
    {
      id: 'weight',
      header: 'Weight',
      numeric: true,
      value: (row) => row.weightGrams,
      show: (row) => units.weight(row.weightGrams),
      text: (row) => units.weight(row.weightGrams),
      width: 104,
    },
    {
      id: 'share',
      header: 'Of payload',
      numeric: true,
      value: (row) => (row.payloadGrams === 0 ? 0 : row.weightGrams / row.payloadGrams),
      show: (row) => shareWords(row.weightGrams, row.payloadGrams),
      text: (row) => shareWords(row.weightGrams, row.payloadGrams),
      width: 100,
    },
    {
      id: 'leaves',
      header: 'Leaves',
      value: (row) => (row.leavesAt === null ? 0 : Date.parse(row.leavesAt)),
      show: (row) => (row.leavesAt === null ? 'not said' : words.full(row.leavesAt)),
      text: (row) => (row.leavesAt === null ? 'not said' : words.full(row.leavesAt)),
      width: 150,
    },
    { id: 'tied', header: 'Tied down by', value: (row) => row.tiedDownBy ?? 'nobody yet', width: 150 },
  ];
}
