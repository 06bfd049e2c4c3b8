// Containers: racks, bins, pallets, bundles with what is in them and what they weigh; one of them, or the form by
// which a piece is given a tag, at the side.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { type Units, useUnits } from '../../../parts/units.tsx';
import { SidePane } from '../side-pane.tsx';
import { ContainerPane } from './container-pane.tsx';
import { type ContainerRow, fillingWords, piecesText } from './gang-words.ts';
import type { ViewProps } from './gangs-screen.tsx';
import { TagForm } from './tag-form.tsx';

export function ContainersView({ chosen, adding, onOpen, onClose }: ViewProps): ReactNode {
  const list = useCore('container.list', {});
  const units = useUnits();
  const [, change] = useAddressQuery();
  const columns = useMemo(() => columnsOf(units), [units]);
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the containers …" />;
  const row = list.data.containers.find((each) => each.container === chosen);
  return (
    <>
      <div className="pane grow yard-main">
        <DataTable
          caption="Containers"
          columns={columns}
          rows={list.data.containers}
          rowKey={tagOf}
          selectedKey={chosen}
          onSelect={(each: ContainerRow) => onOpen(each.container === chosen ? null : each.container)}
          sortBy="container"
          filterLabel="Filter"
          empty={
            <Empty title="No container has a tag yet">
              <p>
                Racks, bins, pallets and bundles are pieces that hold pieces: one that bears a tag is moved
                with everything in it, and counted by weight.{' '}
                <button type="button" onClick={() => change({ add: 'open' })}>
                  Tag a piece
                </button>
              </p>
            </Empty>
          }
        />
      </div>
      {adding ? (
        <SidePane title="Give a piece a tag" className="gang-side" onClose={() => change({ add: null })}>
          <TagForm nextTags={list.data.nextTags} onDone={onOpen} />
        </SidePane>
      ) : null}
      {!adding && row !== undefined ? (
        <SidePane
          key={row.container}
          title={`${row.container} · ${row.name}`}
          className="gang-side"
          onClose={onClose}
        >
          <ContainerPane row={row} />
        </SidePane>
      ) : null}
    </>
  );
}

function tagOf(row: ContainerRow): string {
  return row.container;
}

function columnsOf(units: Units): readonly Column<ContainerRow>[] {
  const weight = (
    id: string,
    header: string,
    gramsOf: (row: ContainerRow) => number | null,
  ): Column<ContainerRow> => ({
    id,
    header,
    numeric: true,
    value: (row) => gramsOf(row) ?? -1,
    show: (row) => weightText(gramsOf(row), units),
    text: (row) => weightText(gramsOf(row), units),
    width: 94,
  });
  return [
    { id: 'container', header: 'Tag', value: tagOf, show: (row) => <b>{row.container}</b>, width: 100 },
    { id: 'name', header: 'What it is', value: (row) => `${row.component} ${row.name}`, width: 190 },
    { id: 'owner', header: 'Owner', value: ownerWords, width: 110 },
    { id: 'place', header: 'Place', value: (row) => `${row.place} ${row.placeName}`, width: 190 },
    { id: 'filling', header: 'Filling', value: (row) => fillingWords[row.filling], width: 92 },
    { id: 'content', header: 'What is in it', value: (row) => piecesText(row.content), width: 240 },
    { id: 'pieces', header: 'Pieces', numeric: true, value: (row) => row.pieces, width: 74 },
    weight('tare', 'Empty', (row) => row.tareGrams),
    weight('inside', 'Content', (row) => row.contentGrams),
    weight('reckoned', 'Together', (row) => row.reckonedGrams),
    weight('gross', 'As weighed', (row) => row.grossGrams),
  ];
}

function weightText(grams: number | null, units: Units): string {
  return grams === null ? '' : units.weight(grams);
}

function ownerWords(row: ContainerRow): string {
  return row.onHire ? `${row.owner}, on hire` : row.owner;
}
