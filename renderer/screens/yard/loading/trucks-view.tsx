// The trucks that loads are made for; one of them, or the form for a new one, at the side.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { type Units, useUnits } from '../../../parts/units.tsx';
import { SidePane } from '../side-pane.tsx';
import type { Truck } from './truck-draft.ts';
import { TruckForm } from './truck-form.tsx';

export function TrucksView(): ReactNode {
  const list = useCore('truck.list', {});
  const [query, change] = useAddressQuery();
  const units = useUnits();
  const columns = useMemo(() => columnsOf(units), [units]);
  const chosen = list.data?.trucks.find(({ code }) => code === query.get('truck')) ?? null;
  const adding = query.get('add') !== null;
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the trucks …" />;
  return (
    <>
      <div className="pane grow yard-main">
        <DataTable
          caption="Trucks"
          columns={columns}
          rows={list.data.trucks}
          rowKey={codeOf}
          selectedKey={chosen?.code ?? null}
          onSelect={(row: Truck) => change({ truck: row.code === chosen?.code ? null : row.code, add: null })}
          sortBy="code"
          empty={
            <Empty title="No truck is entered yet">
              <p>
                A truck with its payload, its deck and how high it may be stacked: loads are made for those
                that are entered here.{' '}
                <button type="button" onClick={() => change({ add: 'open' })}>
                  Enter a truck
                </button>
              </p>
            </Empty>
          }
        />
      </div>
      {adding ? (
        <SidePane title="Enter a truck" onClose={() => change({ add: null })}>
          <TruckForm truck={null} onSaved={(code) => change({ add: null, truck: code })} />
        </SidePane>
      ) : null}
      {!adding && chosen !== null ? (
        <SidePane key={chosen.code} title={`Truck ${chosen.code}`} onClose={() => change({ truck: null })}>
          <TruckForm truck={chosen} onSaved={() => undefined} />
        </SidePane>
      ) : null}
    </>
  );
}

function codeOf({ code }: Truck): string {
  return code;
}

function columnsOf(units: Units): readonly Column<Truck>[] {
  const length = (id: keyof Truck & `${string}Nm`, header: string): Column<Truck> => ({
    id,
    header,
    numeric: true,
    value: (row) => row[id],
    show: (row) => units.length(row[id]),
    text: (row) => units.length(row[id]),
    width: 130,
  });
  return [
    { id: 'code', header: 'Truck', value: codeOf, show: (row) => <b>{row.code}</b>, width: 100 },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 220 },
    {
      id: 'payload',
      header: 'Payload',
      numeric: true,
      value: (row) => row.payloadGrams,
      show: (row) => units.weight(row.payloadGrams),
      text: (row) => units.weight(row.payloadGrams),
      width: 120,
    },
    length('deckLengthNm', 'Deck length'),
    length('deckWidthNm', 'Deck width'),
    length('stackHeightNm', 'Highest stack'),
  ];
}
