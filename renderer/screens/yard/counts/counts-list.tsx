// The counts, newest first, under the share of records that were found right.
import { type ReactNode, useMemo } from 'react';
import { useLocation } from 'wouter';
import { useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { accuracyWords, type CountHead, kindWords, stateWords } from './count-words.ts';

export function CountsList(): ReactNode {
  const list = useCore('count.list', {});
  const words = useTimeWords();
  const [, navigate] = useLocation();
  const [, change] = useAddressQuery();
  const columns = useMemo(() => columnsOf(words), [words]);
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the counts …" />;
  const { counts, accuracy, byClass, floorPercent, bestPercent } = list.data;
  if (counts.length === 0)
    return (
      <Empty title="No count yet">
        <p>
          A spot check looks at the ten lines that most deserve it. What is counted is held against what was
          booked at that moment, and every difference is explained before it is booked.
        </p>
        <button type="button" className="primary" onClick={() => change({ start: 'spot' })}>
          Start a spot check
        </button>
      </Empty>
    );
  return (
    <>
      <p className="counts-accuracy">
        <b>{accuracyWords(accuracy)}</b>
        <span className="soft">
          {' '}
          · floor {floorPercent} %, best {bestPercent} % ·{' '}
          {byClass
            .filter((each) => each.records > 0)
            .map((each) => `class ${each.class}: ${each.within} of ${each.records}`)
            .join(' · ')}
        </span>
      </p>
      <DataTable
        caption="Counts, newest first"
        columns={columns}
        rows={counts}
        rowKey={rowKey}
        onSelect={(row) => navigate(`/yard/counts/${encodeURIComponent(row.id)}`)}
        sortBy="-number"
        filterLabel="Filter"
      />
    </>
  );
}

function rowKey(row: CountHead): string {
  return row.id;
}

function columnsOf(words: TimeWords): readonly Column<CountHead>[] {
  return [
    { id: 'number', header: 'Count', value: (row) => row.number, show: (row) => <b>{row.name}</b>, text: (row) => row.name, width: 90 },
    { id: 'state', header: 'State', value: (row) => stateWords[row.state], width: 90 },
    { id: 'kind', header: 'Kind', value: (row) => kindWords[row.kind], width: 110 },
    { id: 'places', header: 'Places', value: (row) => row.places.join(', '), width: 170 },
    { id: 'startedAt', header: 'Begun', value: (row) => row.startedAt, show: (row) => words.full(row.startedAt), text: (row) => words.full(row.startedAt), width: 150 },
    { id: 'counted', header: 'Counted', value: (row) => row.counted, show: (row) => `${row.counted} of ${row.lines}`, numeric: true, width: 90 },
    { id: 'how', header: 'How', value: (row) => `${row.blind ? 'blind, ' : ''}${row.counters === 2 ? 'two counters' : 'one counter'}`, width: 150 },
    { id: 'differing', header: 'Differing', value: (row) => row.differing ?? -1, show: (row) => row.differing ?? '', numeric: true, width: 90 },
    { id: 'open', header: 'Left open', value: (row) => row.leftOpen ?? -1, show: (row) => row.leftOpen ?? '', numeric: true, width: 90 },
    { id: 'accuracy', header: 'Right', value: (row) => row.accuracy?.percent ?? -1, show: (row) => (row.accuracy === null ? '' : accuracyWords(row.accuracy)), text: (row) => (row.accuracy === null ? '' : accuracyWords(row.accuracy)), width: 230 },
    { id: 'bookedBy', header: 'Booked by', value: (row) => row.bookedBy ?? '', width: 110 },
    { id: 'remark', header: 'Remark', value: (row) => row.remark ?? '', width: 160 },
  ]; // prettier-ignore
}
