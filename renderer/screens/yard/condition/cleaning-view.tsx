// What is to clean, in the order in which it is cleaned, when it is due back, and the slip for what was done.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { useLiveNow } from '../../../parts/live-now.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { useSettings } from '../counts/use-settings.ts';
import { SidePane } from '../side-pane.tsx';
import type { CleanRow } from './care-words.ts';
import { CleanForm } from './clean-form.tsx';
import { DueBack } from './due-back.tsx';
import { NumberSetting } from './number-setting.tsx';

export function CleaningView(props: { readonly onClose: () => void }): ReactNode {
  const job = useJob();
  const care = useCore('yard.care', { job: job.code, ...useLiveNow(job.code) });
  const settings = useSettings();
  const words = useTimeWords();
  const columns = useMemo(() => columnsOf(words), [words]);
  const [query, change] = useAddressQuery();
  const chosen = query.get('line');
  if (care.error !== null) return <RefusalNote error={care.error} />;
  if (care.data === undefined) return <Waiting what="Looking for what is to clean …" />;
  const { toClean, dueBack, cleanH } = care.data;
  const row = toClean.find((each) => keyOf(each) === chosen);
  return (
    <>
      <div className="pane grow yard-main">
        {settings.error === null ? null : <RefusalNote error={settings.error} />}
        <DataTable
          caption="To clean, first in first out"
          columns={columns}
          rows={toClean}
          rowKey={keyOf}
          selectedKey={chosen}
          onSelect={(each: CleanRow) => change({ line: keyOf(each) === chosen ? null : keyOf(each) })}
          filterLabel="Filter"
          tools={
            settings.settings === undefined ? null : (
              <NumberSetting
                label="Cleaned in a working day"
                value={settings.settings.cleanedPerDay}
                most={1_000_000}
                none="not said"
                after={
                  settings.settings.cleanedPerDay === null
                    ? `pieces: each quantity takes ${cleanH} hours by the clock`
                    : 'pieces'
                }
                onSet={(cleanedPerDay) =>
                  settings.set(
                    { cleanedPerDay },
                    cleanedPerDay === null
                      ? 'reckon with the job’s clean hours'
                      : `clean ${cleanedPerDay} pieces in a working day`,
                  )
                }
              />
            )
          }
          empty={
            <Empty title="Nothing is to clean">
              <p>What is stripped dirty stands here until it is booked as cleaned.</p>
            </Empty>
          }
        />
        <DueBack rows={dueBack} />
      </div>
      {row === undefined ? null : (
        <SidePane
          key={keyOf(row)}
          title={`${row.quantity} ${row.component} to clean at ${row.location}`}
          onClose={props.onClose}
        >
          <p className="side-words soft">
            {row.name}, of {row.owner}. {dueWords(row, words)}.
          </p>
          <CleanForm row={row} onDone={props.onClose} />
        </SidePane>
      )}
    </>
  );
}

function keyOf(row: CleanRow): string {
  return [row.component, row.owner, row.location, row.since ?? '', row.due ?? ''].join(' ');
}

function dueWords(row: CleanRow, words: TimeWords): string {
  return row.due === null ? 'Its time has passed: no plan counts on it' : `Due back ${words.full(row.due)}`;
}

function columnsOf(words: TimeWords): readonly Column<CleanRow>[] {
  return [
    {
      id: 'component',
      header: 'Component',
      value: (row) => row.component,
      show: (row) => <b>{row.component}</b>,
      width: 120,
    },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 190 },
    {
      id: 'quantity',
      header: 'Pieces',
      value: (row) => row.quantity,
      numeric: true,
      width: 80,
      total: (rows) => rows.reduce((sum, { quantity }) => sum + quantity, 0),
    },
    { id: 'location', header: 'Where', value: (row) => row.location, width: 110 },
    { id: 'owner', header: 'Owner', value: (row) => row.owner, width: 90 },
    {
      id: 'since',
      header: 'Dirty since',
      value: (row) => row.since ?? '',
      show: (row) => (row.since === null ? 'before the plan' : words.full(row.since)),
      text: (row) => (row.since === null ? 'before the plan' : words.full(row.since)),
      width: 150,
    },
    {
      id: 'due',
      header: 'Due back',
      value: (row) => row.due ?? '',
      show: (row) =>
        row.due === null ? <span className="short-word">past its time</span> : words.full(row.due),
      text: (row) => (row.due === null ? 'past its time' : words.full(row.due)),
      width: 160,
    },
  ];
}
