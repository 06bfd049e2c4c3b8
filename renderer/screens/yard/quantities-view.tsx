// What lies where: every line, or gathered by component or by location, as booked now or at any moment.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { Choice } from '../../parts/choice.tsx';
import { DataTable } from '../../parts/data-table.tsx';
import { useJob } from '../../parts/job.tsx';
import { useTimeWords } from '../../parts/job-time.ts';
import { Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { useWindowKeys } from '../../parts/window-keys.ts';
import { groupColumns, lineColumns } from './quantity-columns.tsx';
import { lineKey, standingOf } from './standing-words.ts';
import { summaryColumns } from './summary-columns.tsx';
import { WhenField } from './when-field.tsx';
import { groupsBy, type StockGroup, withUnstocked } from './yard-groups.ts';
import { placeKindWords, type StockRow } from './yard-words.ts';

const gatherings = [
  ['lines', 'every line'],
  ['component', 'by component'],
  ['location', 'by location'],
] as const;

/** In the address: whose history is at the side. */
export const nothingChosen = { component: null, owner: null, location: null, condition: null, line: null };

export function QuantitiesView(): ReactNode {
  const [query, change] = useAddressQuery();
  const gathered = gatherings.find(([by]) => by === query.get('by'))?.[0] ?? 'lines';
  const at = query.get('at');
  const outside = query.get('outside') !== null;
  const words = useTimeWords();
  useWindowKeys((event) => {
    if (event.key.toLowerCase() !== 'h' || event.ctrlKey || event.metaKey || event.altKey) return;
    // Of the row that has the focus, as Enter does.
    if (event.target instanceof HTMLTableRowElement) event.target.click();
  });
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
        onChange={(by) => change({ by: by === 'lines' ? null : by, ...nothingChosen })}
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
      <span className="soft">
        <kbd>H</kbd> or <kbd>Enter</kbd>: history of a row
      </span>
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
      <QuantityTable rows={stock.data.rows} gathered={gathered} isNow={at === null} tools={tools} />
    </>
  );
}

type Gathered = (typeof gatherings)[number][0];

function QuantityTable(props: {
  readonly rows: readonly StockRow[];
  readonly gathered: Gathered;
  /** As booked now: what is due and needed is of now as well. */
  readonly isNow: boolean;
  readonly tools: ReactNode;
}): ReactNode {
  return props.gathered === 'lines' ? (
    <LineTable rows={props.rows} tools={props.tools} />
  ) : (
    <GroupTable {...props} gathered={props.gathered} />
  );
}

const nothingYet = (
  <Empty title="Nothing is booked yet">
    <p>
      Import a stock list on the <a href="#/book">Book</a> screen, or book a delivery or an opening figure.
    </p>
  </Empty>
);

function LineTable(props: { readonly rows: readonly StockRow[]; readonly tools: ReactNode }): ReactNode {
  const [query, change] = useAddressQuery();
  const units = useUnits();
  const foreign = useCore('yard.foreign', {});
  const standing = useMemo(() => standingOf(foreign.data?.rows ?? []), [foreign.data]);
  const columns = useMemo(() => lineColumns(units, standing), [units, standing]);
  return (
    <DataTable
      key="lines"
      caption="Quantities by component, owner, location and condition"
      columns={columns}
      rows={props.rows}
      rowKey={lineKey}
      selectedKey={query.get('line') ?? null}
      onSelect={(row: StockRow) => {
        const { component, owner, location, condition } = row;
        change({ component, owner, location, condition, line: lineKey(row), slip: null });
      }}
      sortBy="component"
      filterLabel="Filter"
      tools={props.tools}
      rowClass={(row) => (standing.has(lineKey(row)) ? 'stands-elsewhere' : undefined)}
      empty={nothingYet}
    />
  );
}

function GroupTable(props: {
  readonly rows: readonly StockRow[];
  readonly gathered: 'component' | 'location';
  readonly isNow: boolean;
  readonly tools: ReactNode;
}): ReactNode {
  const { rows, gathered } = props;
  const [query, change] = useAddressQuery();
  const units = useUnits();
  const words = useTimeWords();
  const job = useJob();
  const places = useCore('yard.places', {});
  const asks = props.isNow && gathered === 'component';
  const summary = useCore('yard.summary', { job: job.code }, { enabled: asks });
  const needed = asks ? summary.data?.rows : undefined;
  const groups = useMemo(() => {
    const names = new Map(places.data?.locations.map((place) => [place.code, place.name]));
    const gatheredRows = groupsBy(rows, gathered, (row) =>
      gathered === 'component' ? row.name : (names.get(row.location) ?? placeKindWords[row.locationKind]),
    );
    return needed === undefined ? gatheredRows : withUnstocked(gatheredRows, needed);
  }, [rows, gathered, places.data, needed]);
  const columns = useMemo(() => {
    const byComponent = new Map(needed?.map((row) => [row.component, row]));
    const more = needed === undefined ? [] : summaryColumns(byComponent, words);
    return groupColumns(units, gathered, groups, more);
  }, [units, words, gathered, groups, needed]);
  return (
    <>
      {asks && summary.error !== null ? <RefusalNote error={summary.error} /> : null}
      <DataTable
        key={`${gathered} ${needed === undefined ? '' : 'with needs'}`}
        caption={gathered === 'component' ? 'Quantities by component' : 'Quantities by location'}
        columns={columns}
        rows={groups}
        rowKey={groupKey}
        selectedKey={query.get(gathered)}
        onSelect={({ component, location }: StockGroup) =>
          change({ component, location, owner: null, condition: null, line: null, slip: null })
        }
        sortBy="key"
        filterLabel="Filter"
        tools={props.tools}
        empty={nothingYet}
      />
    </>
  );
}

function groupKey(group: StockGroup): string {
  return group.key;
}
