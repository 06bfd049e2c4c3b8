// Repairs: open ones by when they are due back, pieces that wait for one, and those done; each with its slips at its side.
import { type ReactNode, useMemo } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { DataTable } from '../../../parts/data-table.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { useLiveNow } from '../../../parts/live-now.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { SidePane } from '../side-pane.tsx';
import type { RepairRow } from './care-words.ts';
import { FinishForm } from './finish-form.tsx';
import { RepairForm } from './repair-form.tsx';
import { repairColumns } from './repair-columns.tsx';
import { type RepairLine, repairLines } from './repair-lines.ts';

export function RepairsView(props: { readonly adding: boolean; readonly onClose: () => void }): ReactNode {
  const [query, change] = useAddressQuery();
  const live = useLiveNow(useJob().code);
  const withDone = query.get('done') !== null;
  const list = useCore('repair.list', { ...(withDone ? {} : { state: 'open' as const }), ...live });
  const words = useTimeWords();
  const columns = useMemo(() => repairColumns(words), [words]);
  const lines = useMemo(() => (list.data === undefined ? [] : repairLines(list.data)), [list.data]);
  const chosen = query.get('line');
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the repairs …" />;
  const line = lines.find((each) => each.key === chosen);
  return (
    <>
      <div className="pane grow yard-main">
        <DataTable
          caption="Repairs and pieces that wait for one"
          columns={columns}
          rows={lines}
          rowKey={(each: RepairLine) => each.key}
          selectedKey={chosen}
          onSelect={(each: RepairLine) => change({ line: each.key === chosen ? null : each.key, add: null })}
          filterLabel="Filter"
          tools={
            <label className="tick">
              <input
                type="checkbox"
                checked={withDone}
                onChange={(event) => change({ done: event.target.checked ? 'with' : null })}
              />
              done and dropped too
            </label>
          }
          empty={
            <Empty title="Nothing is to repair">
              <p>
                Pieces booked to repair stand here, with what is wrong and when they are due back.{' '}
                <button type="button" onClick={() => change({ add: 'open', line: null })}>
                  Enter a repair
                </button>
              </p>
            </Empty>
          }
        />
      </div>
      {props.adding ? (
        <SidePane title="Enter a repair" className="gang-side" onClose={props.onClose}>
          <RepairForm of={null} onDone={props.onClose} />
        </SidePane>
      ) : null}
      {!props.adding && line !== undefined ? (
        <SidePane
          key={line.key}
          title={`${line.quantity} ${line.component} at ${line.place}`}
          className="gang-side"
          onClose={props.onClose}
        >
          {line.repair === null ? (
            <>
              <p className="side-words soft">{line.name}, to repair, and nobody has them in hand.</p>
              <RepairForm of={line.waiting} onDone={props.onClose} />
            </>
          ) : (
            <RepairParts row={line.repair} onClose={props.onClose} />
          )}
        </SidePane>
      ) : null}
    </>
  );
}

function RepairParts({ row, onClose }: { readonly row: RepairRow; readonly onClose: () => void }): ReactNode {
  const words = useTimeWords();
  const drop = useCommand('repair.drop');
  if (row.state !== 'open')
    return (
      <p className="side-words">
        {row.fault}. {row.state === 'dropped' ? 'Dropped: the pieces stayed to repair.' : null}
        {row.done === null
          ? null
          : `Done ${words.full(row.done.at)} in ${row.done.hours} hours: ${row.done.ready} ready, ${row.done.readyHidden} for hidden faces only, ${row.done.scrapped} scrapped.`}
      </p>
    );
  return (
    <>
      <p className="side-words soft">
        {row.name}, of {row.owner}: {row.fault}.
      </p>
      <FinishForm row={row} onDone={onClose} />
      <RepairForm of={row} onDone={onClose} />
      <div className="act-buttons">
        <button
          type="button"
          className="quiet"
          onClick={() => drop.mutate({ repair: row.id, version: row.version }, { onSuccess: onClose })}
        >
          Drop the repair: the pieces stay to repair
        </button>
      </div>
      {drop.error === null ? null : <RefusalNote error={drop.error} />}
    </>
  );
}
