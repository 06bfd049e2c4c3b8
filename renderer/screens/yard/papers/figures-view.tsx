// The owner's figure, ours and the agreed one side by side, and what the ledger has. A signed figure is never changed:
// a later one is added below it, and all of them are read at the side.
import { type ReactNode, useMemo } from 'react';
import { type Output, useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { shortDate } from '../../../parts/time-words.ts';
import { SidePane } from '../side-pane.tsx';
import { FigureForm } from './figure-form.tsx';

type FigureRow = Output<'figure.list'>['rows'][number];
export type Figure = Output<'figure.list'>['all'][number];

export const sideWords: Readonly<Record<Figure['whose'], string>> = {
  owner: 'the owner’s',
  ours: 'ours',
  agreed: 'agreed',
};

export function FiguresView(): ReactNode {
  const list = useCore('figure.list', {});
  const [query, change] = useAddressQuery();
  const chosen = query.get('row');
  const adding = query.get('form') !== null;
  const history = useMemo(
    () => (list.data?.all ?? []).filter((figure) => keyOf(figure) === chosen),
    [list.data, chosen],
  );
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Reading the figures …" />;
  const row = list.data.rows.find((each) => keyOf(each) === chosen);
  const add = (
    <button type="button" aria-expanded={adding} onClick={() => change({ form: adding ? null : 'figure' })}>
      Add a signed figure
    </button>
  );
  return (
    <>
      <div className="pane grow yard-main">
        <DataTable
          caption="Figures side by side"
          columns={columns}
          rows={list.data.rows}
          rowKey={keyOf}
          selectedKey={chosen}
          onSelect={(figure: FigureRow) => change({ row: keyOf(figure), form: null })}
          filterLabel="Filter"
          tools={add}
          empty={
            <Empty title="No figure is signed yet">
              <p>
                What an owner says is with us, what we say, and what both agreed stand here side by side. None
                is ever changed; a later one stands below it.
              </p>
            </Empty>
          }
        />
      </div>
      {adding || row !== undefined ? (
        <SidePane
          key={`${chosen} ${adding}`}
          className="figure-pane"
          title={row === undefined ? 'Add a signed figure' : `${row.component} of ${row.owner}`}
          onClose={() => change({ row: null, form: null })}
        >
          {history.length === 0 ? null : (
            <DataTable caption="Every figure" columns={every} rows={history} rowKey={numberOf} />
          )}
          <FigureForm
            key={chosen ?? ''}
            owner={row?.owner ?? null}
            component={row?.component ?? null}
            onDone={(key) => change({ row: key, form: null })}
          />
        </SidePane>
      ) : null}
    </>
  );
}

export function keyOf({ owner, component }: { readonly owner: string; readonly component: string }): string {
  return `${owner} ${component}`;
}

function numberOf(figure: Figure): string {
  return String(figure.number);
}

/** "214 on 1 Mar" */
function figureText(figure: Figure | null): string {
  return figure === null ? '' : `${figure.quantity} on ${shortDate(figure.asOf)}`;
}

function side(whose: 'theirs' | 'ours' | 'agreed', header: string): Column<FigureRow> {
  return {
    id: whose,
    header,
    numeric: true,
    value: (row) => row[whose]?.quantity ?? -1,
    show: (row) => figureText(row[whose]),
    text: (row) => figureText(row[whose]),
    width: 122,
  };
}

const columns: readonly Column<FigureRow>[] = [
  { id: 'owner', header: 'Owner', value: (row) => row.owner, width: 72 },
  { id: 'component', header: 'Component', value: (row) => row.component, width: 96 },
  { id: 'name', header: 'Called', value: (row) => row.name, width: 116 },
  side('theirs', 'The owner says'),
  side('ours', 'We say'),
  side('agreed', 'Agreed'),
  {
    id: 'open',
    header: 'Still open',
    numeric: true,
    value: (row) => row.open ?? 0,
    show: (row) =>
      row.open === null ? (
        <span className="soft">{row.agreed === null ? '' : 'settled'}</span>
      ) : row.open === 0 ? (
        <span className="soft">none</span>
      ) : (
        <b className="short-word">{row.open > 0 ? `+${row.open}` : row.open}</b>
      ),
    text: (row) => String(row.open ?? ''),
    width: 90,
  },
  { id: 'held', header: 'Ledger: with us', numeric: true, value: (row) => row.held, width: 116 },
  {
    id: 'gone',
    header: 'scrapped, lost',
    numeric: true,
    value: (row) => row.gone,
    show: (row) => (row.gone === 0 ? '' : row.gone),
    width: 108,
  },
];

const every: readonly Column<Figure>[] = [
  { id: 'asOf', header: 'Of the day', value: (row) => row.asOf, width: 104 },
  { id: 'whose', header: 'Whose', value: (row) => sideWords[row.whose], width: 96 },
  { id: 'quantity', header: 'Pieces', numeric: true, value: (row) => row.quantity, width: 70 },
  { id: 'held', header: 'Ledger', numeric: true, value: (row) => row.held, width: 72 },
  { id: 'gone', header: 'gone', numeric: true, value: (row) => row.gone, width: 62 },
  { id: 'signedBy', header: 'Signed by', value: (row) => row.signedBy, width: 120 },
  { id: 'paper', header: 'Paper', value: (row) => row.paper ?? '', width: 90 },
  { id: 'remark', header: 'Remark', value: (row) => row.remark ?? '', width: 160 },
];
