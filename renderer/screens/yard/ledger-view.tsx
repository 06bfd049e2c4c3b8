// The ledger, newest first, whole or by reason, condition, component, place, owner or paper; an entry is opened at the
// side, where it can be reversed. What it is filtered by stands in the address.
import { type ReactNode, useCallback, useMemo } from 'react';
import { conditions, reasons } from '../../../core/yard/movement.ts';
import { useCore } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { DataTable } from '../../parts/data-table.tsx';
import { useTimeWords } from '../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { usePlanYear } from './plan-year.ts';
import { MovementDetail } from './movement-detail.tsx';
import { movementClass, movementColumns } from './movement-columns.tsx';
import { PageButtons } from './page-buttons.tsx';
import { paperText } from './paper-link.tsx';
import { type MovementsOf, useMovements } from './use-movements.ts';
import { conditionWords, type MovementRow, reasonWords } from './yard-words.ts';

export const noFilters = {
  movement: null,
  reason: null,
  state: null,
  piece: null,
  place: null,
  whose: null,
  paper: null,
};

export function LedgerView(): ReactNode {
  const [query, change] = useAddressQuery();
  const chosen = query.get('movement');
  const go = useCallback((id: string | null) => change({ movement: id }), [change]);
  const words = useTimeWords();
  const year = usePlanYear();
  const of = filtersOf(query);
  const page = useMovements(of, go, 200);
  const columns = useMemo(() => movementColumns(words, page.links, false, year), [words, page.links, year]);
  const row = page.rows.find(({ id }) => id === chosen);
  const tools = (
    <>
      <LedgerFilters paperWords={of.paper === undefined ? null : wordsOfPaper(page.rows)} />
      <PageButtons page={page} />
    </>
  );
  if (page.error !== null) return <RefusalNote error={page.error} />;
  if (page.answer === undefined) return <Waiting what="Reading the ledger …" />;
  const isFiltered = Object.keys(of).length > 0;
  return (
    <div className="ledger">
      <DataTable
        caption="Movements, newest first"
        columns={columns}
        rows={page.rows}
        rowKey={rowKey}
        selectedKey={chosen}
        onSelect={(movement: MovementRow) => go(movement.id)}
        sortBy="-number"
        filterLabel="Filter"
        tools={tools}
        rowClass={movementClass}
        empty={isFiltered ? 'No movement is of all that.' : 'No movement is booked yet.'}
      />
      {row === undefined ? null : (
        <MovementDetail key={row.id} row={row} links={page.links} onClose={() => go(null)} />
      )}
    </div>
  );
}

function filtersOf(query: URLSearchParams): MovementsOf {
  const reason = reasons.find((each) => each === query.get('reason'));
  const condition = conditions.find((each) => each === query.get('state'));
  const [component, location, owner, paper] = ['piece', 'place', 'whose', 'paper'].map((name) =>
    query.get(name),
  );
  return {
    ...(reason === undefined ? {} : { reason }),
    ...(condition === undefined ? {} : { condition }),
    ...(typeof component === 'string' ? { component } : {}),
    ...(typeof location === 'string' ? { location } : {}),
    ...(typeof owner === 'string' ? { owner } : {}),
    ...(typeof paper === 'string' ? { paper } : {}),
  };
}

function LedgerFilters(props: { readonly paperWords: string | null }): ReactNode {
  const [query, change] = useAddressQuery();
  const places = useCore('yard.places', {});
  const components = useCore('component.list', {});
  const select = (
    label: string,
    name: string,
    all: string,
    options: readonly (readonly [string, string])[],
  ): ReactNode => (
    <label className="ledger-filter">
      {label}{' '}
      <select
        value={query.get(name) ?? ''}
        onChange={(event) =>
          change({ [name]: event.target.value === '' ? null : event.target.value, movement: null })
        }
      >
        <option value="">{all}</option>
        {options.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
  return (
    <>
      {select(
        'Reason',
        'reason',
        'any',
        reasons.map((each) => [each, reasonWords[each]] as const),
      )}
      {select('Component', 'piece', 'any', codes(components.data?.components))}
      {select('Place', 'place', 'any', codes(places.data?.locations))}
      {select('Owner', 'whose', 'any', codes(places.data?.owners))}
      {select(
        'Condition',
        'state',
        'any',
        conditions.map((each) => [each, conditionWords[each]] as const),
      )}
      {props.paperWords === null ? null : (
        <button type="button" onClick={() => change({ paper: null, movement: null })}>
          Only of {props.paperWords} ✕
        </button>
      )}
    </>
  );
}

function codes(
  list: readonly { readonly code: string }[] | undefined,
): readonly (readonly [string, string])[] {
  return (list ?? []).map(({ code }) => [code, code]);
}

function wordsOfPaper(rows: readonly MovementRow[]): string {
  const [first] = rows;
  const text = first === undefined ? '' : paperText(first);
  return text === '' ? 'one paper' : text;
}

function rowKey(row: MovementRow): string {
  return row.id;
}
