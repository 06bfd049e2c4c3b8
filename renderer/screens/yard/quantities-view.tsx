// What lies where: every line, or gathered by component or by location, as booked now or at any moment.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { Choice } from '../../parts/choice.tsx';
import { DataTable } from '../../parts/data-table.tsx';
import { useTimeWords } from '../../parts/job-time.ts';
import { Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { groupColumns, lineColumns } from './quantity-columns.tsx';
import { WhenField } from './when-field.tsx';
import { groupsBy, type StockGroup } from './yard-groups.ts';
import { placeKindWords, type StockRow } from './yard-words.ts';

const gatherings = [
  ['lines', 'every line'],
  ['component', 'by component'],
  ['location', 'by location'],
] as const;

export function QuantitiesView(): ReactNode {
  const [query, change] = useAddressQuery();
  const gathered = gatherings.find(([by]) => by === query.get('by'))?.[0] ?? 'lines';
  const at = query.get('at');
  const outside = query.get('outside') !== null;
  const words = useTimeWords();
  const stock = useCore('yard.quantities', {
    ...(at === null ? {} : { at }),
    ...(outside ? { outside: true } : {}),
  });
  const tools = (
    <>
      <Choice
        label="Gathered"
        value={gathered}
        options={gatherings}
        onChange={(by) => change({ by: by === 'lines' ? null : by, component: null, location: null })}
      />
      <WhenField
        label="At"
        placeholder="as booked now"
        value={at}
        onChange={(next) => change({ at: next })}
      />
      <label className="tick">
        <input
          type="checkbox"
          checked={outside}
          onChange={(event) => change({ outside: event.target.checked ? 'with' : null })}
        />
        suppliers, scrap and lost too
      </label>
    </>
  );
  if (stock.error !== null) return <RefusalNote error={stock.error} />;
  if (stock.data === undefined) return <Waiting what="Adding up the ledger …" />;
  return (
    <>
      {at === null ? null : (
        <p className="note note-caution">
          <span className="note-word">As of {words.full(at)}</span>
          <span>Movements after that moment are left out.</span>
        </p>
      )}
      <QuantityTable rows={stock.data.rows} gathered={gathered} tools={tools} />
    </>
  );
}

function QuantityTable(props: {
  readonly rows: readonly StockRow[];
  readonly gathered: 'lines' | 'component' | 'location';
  readonly tools: ReactNode;
}): ReactNode {
  const { rows, gathered } = props;
  const [query, change] = useAddressQuery();
  const units = useUnits();
  const places = useCore('yard.places', {});
  const groups = useMemo(() => {
    if (gathered === 'lines') return [];
    const names = new Map(places.data?.locations.map((place) => [place.code, place.name]));
    return groupsBy(rows, gathered, (row) =>
      gathered === 'component' ? row.name : (names.get(row.location) ?? placeKindWords[row.locationKind]),
    );
  }, [rows, gathered, places.data]);
  const lines = useMemo(() => lineColumns(units), [units]);
  const grouped = useMemo(
    () => groupColumns(units, gathered === 'location' ? 'location' : 'component'),
    [units, gathered],
  );
  const [component, location] = [query.get('component'), query.get('location')];
  const empty = (
    <Empty title="Nothing is booked yet">
      <p>
        Import a stock list on the <a href="#/book">Book</a> screen, or book a delivery or an opening figure.
      </p>
    </Empty>
  );
  const open = (chosen: { readonly component: string | null; readonly location: string | null }): void =>
    change({ ...chosen, slip: null });
  if (gathered === 'lines') {
    return (
      <DataTable
        key="lines"
        caption="Quantities by component, owner, location and condition"
        columns={lines}
        rows={rows}
        rowKey={lineKey}
        selectedKey={query.get('line') ?? null}
        onSelect={(row: StockRow) => {
          change({ component: row.component, location: row.location, line: lineKey(row), slip: null });
        }}
        sortBy="component"
        filterLabel="Filter"
        tools={props.tools}
        empty={empty}
      />
    );
  }
  return (
    <DataTable
      key={gathered}
      caption={gathered === 'component' ? 'Quantities by component' : 'Quantities by location'}
      columns={grouped}
      rows={groups}
      rowKey={groupKey}
      selectedKey={gathered === 'component' ? component : location}
      onSelect={(group: StockGroup) => open({ component: group.component, location: group.location })}
      sortBy="key"
      filterLabel="Filter"
      tools={props.tools}
      empty={empty}
    />
  );
}

function lineKey(row: StockRow): string {
  return [row.component, row.owner, row.location, row.condition].join(' ');
}

function groupKey(group: StockGroup): string {
  return group.key;
}
