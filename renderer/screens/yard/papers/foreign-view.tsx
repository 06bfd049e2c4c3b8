// Pieces that are not where they belong: found with us and not ours, and ours at another job; each with since when
// and whether a note went with it. Like pieces of two owners that were taken for each other are swapped back here, and
// places and owners that are missing are entered.
import { type ReactNode, useMemo } from 'react';
import { type Output, useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { SidePane } from '../side-pane.tsx';
import { conditionWords } from '../yard-words.ts';
import { PlaceForm } from './place-form.tsx';
import { SwapForm } from './swap-form.tsx';

type ForeignRow = Output<'yard.foreign'>['rows'][number];

const whatWords: Readonly<Record<ForeignRow['what'], string>> = {
  'not-ours': 'found, not ours',
  elsewhere: 'at another job',
};

export function ForeignView(): ReactNode {
  const foreign = useCore('yard.foreign', {});
  const [query, change] = useAddressQuery();
  const words = useTimeWords();
  const columns = useMemo(() => columnsOf(words), [words]);
  const form = query.get('form');
  if (foreign.error !== null) return <RefusalNote error={foreign.error} />;
  if (foreign.data === undefined) return <Waiting what="Looking through the ledger …" />;
  const toggle = (name: string): void => change({ form: form === name ? null : name });
  return (
    <>
      <div className="pane grow yard-main">
        <DataTable
          caption="Pieces that are not ours, or not here"
          columns={columns}
          rows={foreign.data.rows}
          rowKey={keyOf}
          filterLabel="Filter"
          tools={
            <>
              <button type="button" aria-expanded={form === 'swap'} onClick={() => toggle('swap')}>
                Swap between owners
              </button>
              <button type="button" aria-expanded={form === 'place'} onClick={() => toggle('place')}>
                Enter a place or owner
              </button>
            </>
          }
          rowClass={(row) => (row.noteNumber === null ? 'without-note' : undefined)}
          empty={
            <Empty title="Everything is where it belongs">
              <p>
                Pieces of an owner that is neither us nor a supplier, and pieces at another job, stand here as
                lines of their own, with since when and whether a note went with them.
              </p>
            </Empty>
          }
        />
      </div>
      {form === 'swap' ? (
        <SidePane key="swap" title="Swap like pieces between owners" onClose={() => change({ form: null })}>
          <SwapForm />
        </SidePane>
      ) : null}
      {form === 'place' ? (
        <SidePane key="place" title="A place or an owner" onClose={() => change({ form: null })}>
          <PlaceForm />
        </SidePane>
      ) : null}
    </>
  );
}

function keyOf(row: ForeignRow): string {
  return [row.component, row.owner, row.location, row.condition].join(' ');
}

function columnsOf(words: TimeWords): readonly Column<ForeignRow>[] {
  return [
    { id: 'what', header: 'What', value: (row) => whatWords[row.what], width: 120 },
    { id: 'component', header: 'Component', value: (row) => row.component, width: 104 },
    { id: 'name', header: 'Called', value: (row) => row.name, width: 190 },
    { id: 'quantity', header: 'Pieces', numeric: true, value: (row) => row.quantity, width: 70 },
    { id: 'owner', header: 'Whose', value: (row) => row.owner, width: 100 },
    { id: 'location', header: 'Where', value: (row) => row.location, width: 100 },
    { id: 'condition', header: 'Condition', value: (row) => conditionWords[row.condition], width: 110 },
    {
      id: 'since',
      header: 'Since',
      value: (row) => (row.since === null ? 0 : Date.parse(row.since)),
      show: (row) => (row.since === null ? '' : words.full(row.since)),
      text: (row) => (row.since === null ? '' : words.full(row.since)),
      width: 140,
    },
    {
      id: 'note',
      header: 'Note',
      value: (row) => row.noteNumber ?? 'no note',
      show: (row) =>
        row.noteNumber === null ? <b className="caution-word-ink">no note</b> : <span>{row.noteNumber}</span>,
      width: 90,
    },
    { id: 'remark', header: 'Remark', value: (row) => row.remark ?? '', width: 220 },
  ];
}
