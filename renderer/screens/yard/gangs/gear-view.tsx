// Lifting gear by serial number with its inspections: what is out of date is not ready, and says since when.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { dateWords, shortDate } from '../../../parts/time-words.ts';
import { SidePane } from '../side-pane.tsx';
import { GearForm } from './gear-form.tsx';
import { type GearRow, standingWords } from './gang-words.ts';
import type { ViewProps } from './gangs-screen.tsx';
import { InspectForm } from './inspect-form.tsx';

export function GearView({ chosen, adding, onOpen, onClose }: ViewProps): ReactNode {
  const list = useCore('gear.list', {});
  const [, change] = useAddressQuery();
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the lifting gear …" />;
  const row = list.data.gear.find((each) => each.serial === chosen);
  return (
    <>
      <div className="pane grow yard-main">
        {list.data.serialsOver.map((over) => (
          <p key={`${over.component} ${over.owner} ${over.place}`} className="note note-caution">
            <span className="note-word">caution</span>
            <span>
              {over.component} ({over.owner}) at {over.place}: {over.serials} serial{' '}
              {over.serials === 1 ? 'number' : 'numbers'}, {over.pieces} in the ledger. Either a movement is
              missing or a number is at another place.
            </span>
          </p>
        ))}
        <GearTable rows={list.data.gear} date={list.data.date} chosen={chosen} onOpen={onOpen} />
      </div>
      {adding ? (
        <SidePane
          title="Enter a piece of lifting gear"
          className="gang-side"
          onClose={() => change({ add: null })}
        >
          <GearForm row={null} onDone={onOpen} />
        </SidePane>
      ) : null}
      {!adding && row !== undefined ? (
        <SidePane
          key={row.serial}
          title={`${row.serial} · ${row.name}`}
          className="gang-side"
          onClose={onClose}
        >
          <p className="side-words">
            <StandingWord row={row} />
            {row.by === null ? '' : `, looked at by ${row.by}`}
            {row.remark === null ? '' : `: ${row.remark}`}
          </p>
          <InspectForm row={row} />
          <GearForm row={row} onDone={onOpen} />
        </SidePane>
      ) : null}
    </>
  );
}

function GearTable(props: {
  readonly rows: readonly GearRow[];
  readonly date: string;
  readonly chosen: string | null;
  readonly onOpen: (serial: string | null) => void;
}): ReactNode {
  const [, change] = useAddressQuery();
  const columns = useMemo(() => columnsOf(), []);
  return (
    <DataTable
      caption={`Lifting gear on ${dateWords(props.date)}`}
      columns={columns}
      rows={props.rows}
      rowKey={(row: GearRow) => row.serial}
      selectedKey={props.chosen}
      onSelect={(row: GearRow) => props.onOpen(row.serial === props.chosen ? null : row.serial)}
      sortBy="serial"
      filterLabel="Filter"
      tools={<span className="soft">as of {dateWords(props.date)}</span>}
      empty={
        <Empty title="No lifting gear is entered yet">
          <p>
            Hooks, beams and slings bear serial numbers and are inspected; what is out of date is not ready.{' '}
            <button type="button" onClick={() => change({ add: 'open' })}>
              Enter a piece
            </button>
          </p>
        </Empty>
      }
    />
  );
}

function StandingWord({ row }: { readonly row: GearRow }): ReactNode {
  const isReady = row.standing.is === 'ready';
  return <span className={isReady ? undefined : 'short-word'}>{standingWords(row)}</span>;
}

function columnsOf(): readonly Column<GearRow>[] {
  return [
    {
      id: 'serial',
      header: 'Serial number',
      value: (row) => row.serial,
      show: (row) => <b>{row.serial}</b>,
      width: 146,
    },
    { id: 'component', header: 'Component', value: (row) => `${row.component} ${row.name}`, width: 190 },
    {
      id: 'standing',
      header: 'Ready?',
      value: standingWords,
      show: (row) => <StandingWord row={row} />,
      width: 200,
    },
    {
      id: 'due',
      header: 'Good until',
      value: (row) => row.goodUntil ?? '',
      show: (row) => (row.goodUntil === null ? '' : dateWords(row.goodUntil)),
      text: (row) => row.goodUntil ?? '',
      width: 112,
    },
    {
      id: 'inspected',
      header: 'Inspected',
      value: (row) => row.inspectedOn ?? '',
      show: (row) =>
        row.inspectedOn === null ? 'never' : `${shortDate(row.inspectedOn)} by ${row.by ?? ''}`,
      text: (row) => `${row.inspectedOn ?? 'never'} ${row.by ?? ''}`,
      width: 200,
    },
    { id: 'place', header: 'Place', value: (row) => `${row.place} ${row.placeName}`, width: 200 },
    { id: 'owner', header: 'Owner', value: (row) => row.owner, width: 90 },
    { id: 'remark', header: 'Remark', value: (row) => row.remark ?? '', width: 200 },
  ];
}
