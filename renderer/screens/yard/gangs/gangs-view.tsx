// Every gang that was built, as its last step left it; one of them, or the form by which one is built, at the side.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { type Units, useUnits } from '../../../parts/units.tsx';
import { Severities, severityText } from '../../designs/severities.tsx';
import { SidePane } from '../side-pane.tsx';
import { BuildForm } from './build-form.tsx';
import { GangPane } from './gang-pane.tsx';
import { type GangRow, layingWords, stateWords, turnWords } from './gang-words.ts';
import { IssueForm } from './issue-form.tsx';
import type { ViewProps } from './gangs-screen.tsx';

export function GangsView({ chosen, adding, onOpen, onClose }: ViewProps): ReactNode {
  const list = useCore('gang.list', {});
  const words = useTimeWords();
  const units = useUnits();
  const [query, change] = useAddressQuery();
  const withAll = query.get('all') !== null;
  const issuing = query.get('issue') !== null && !adding;
  const columns = useMemo(() => columnsOf(words, units), [words, units]);
  const gangs = list.data?.gangs;
  const rows = useMemo(
    () => gangs?.filter((each) => withAll || each.state !== 'broken-down') ?? [],
    [gangs, withAll],
  );
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the gangs …" />;
  return (
    <>
      <div className="pane grow yard-main">
        <DataTable
          caption="Gangs"
          columns={columns}
          rows={rows}
          rowKey={tagOf}
          selectedKey={chosen}
          onSelect={(row: GangRow) => onOpen(row.gang === chosen ? null : row.gang)}
          sortBy="gang"
          filterLabel="Filter"
          tools={
            <>
              <label className="tick">
                <input
                  type="checkbox"
                  checked={withAll}
                  onChange={(event) => change({ all: event.target.checked ? 'with' : null })}
                />
                broken down too
              </label>
              <button
                type="button"
                aria-expanded={issuing}
                onClick={() => change({ issue: issuing ? null : 'open', add: null })}
              >
                Issue loose pieces
              </button>
            </>
          }
          empty={
            <Empty title="No gang is built yet">
              <p>
                A gang is a design built from real pieces, with a tag of its own: the pieces in it are booked
                to it.{' '}
                <button type="button" onClick={() => change({ add: 'open' })}>
                  Build a gang
                </button>
              </p>
            </Empty>
          }
        />
      </div>
      {adding ? (
        <SidePane title="Build a gang" className="gang-side" onClose={() => change({ add: null })}>
          <BuildForm tag={null} nextTags={list.data.nextTags} onBuilt={onOpen} />
        </SidePane>
      ) : null}
      {issuing ? (
        <SidePane
          title="Issue loose pieces to a pour"
          className="gang-side"
          onClose={() => change({ issue: null })}
        >
          <IssueForm />
        </SidePane>
      ) : null}
      {!adding && !issuing && chosen !== null ? (
        <GangPane key={chosen} tag={chosen} nextTags={list.data.nextTags} onClose={onClose} />
      ) : null}
    </>
  );
}

function tagOf(row: GangRow): string {
  return row.gang;
}

function columnsOf(words: TimeWords, units: Units): readonly Column<GangRow>[] {
  return [
    { id: 'gang', header: 'Tag', value: (row) => row.gang, show: (row) => <b>{row.gang}</b>, width: 92 },
    { id: 'design', header: 'Design', value: (row) => `${row.design} ${row.designName}`, width: 210 },
    { id: 'state', header: 'State', value: (row) => stateWords[row.state], width: 104 },
    { id: 'place', header: 'Place', value: (row) => `${row.place} ${row.placeName}`, width: 200 },
    { id: 'turn', header: 'Turn', value: turnWords, width: 150 },
    { id: 'laying', header: 'Lies', value: (row) => layingWords[row.laying], width: 90 },
    {
      id: 'at',
      header: 'Since',
      value: (row) => Date.parse(row.at),
      show: (row) => words.full(row.at),
      text: (row) => words.full(row.at),
      width: 136,
    },
    { id: 'pieces', header: 'Pieces', numeric: true, value: (row) => row.pieces, width: 74 },
    {
      id: 'weight',
      header: 'Weight',
      numeric: true,
      value: (row) => row.weightGrams,
      show: (row) => units.weight(row.weightGrams),
      text: (row) => units.weight(row.weightGrams),
      width: 96,
    },
    {
      id: 'findings',
      header: 'Found',
      value: (row) => severityText(countsOf(row)),
      show: (row) => <Severities {...countsOf(row)} />,
      width: 150,
    },
    { id: 'who', header: 'Who', value: (row) => row.who, width: 100, hidden: true },
    { id: 'remark', header: 'Remark', value: (row) => row.remark ?? '', width: 200, hidden: true },
  ];
}

function countsOf({ findings }: GangRow): { readonly stops: number; readonly cautions: number } {
  const count = (severity: string): number => findings.filter((each) => each.severity === severity).length;
  return { stops: count('stop'), cautions: count('caution') };
}
