// At the side of the quantities: the history of a number, every entry that touched its pieces with the quantity after
// it and a link to its paper. Which pieces the number counts can be narrowed by condition.
import { type ReactNode, useMemo, useState } from 'react';
import { groupDigits } from '../../../core/units/weight.ts';
import { conditions } from '../../../core/yard/movement.ts';
import { type Column, DataTable } from '../../parts/data-table.tsx';
import { useTimeWords } from '../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import type { TimeWords } from '../../parts/time-words.ts';
import { type LedgerLinks, movementClass, movementColumns } from './movement-columns.tsx';
import { usePlanYear } from './plan-year.ts';
import { MovementDetail } from './movement-detail.tsx';
import { PageButtons } from './page-buttons.tsx';
import { SidePane } from './side-pane.tsx';
import { useMovements } from './use-movements.ts';
import { type Condition, conditionWords, type MovementRow } from './yard-words.ts';

export interface CountedPieces {
  readonly component: string;
  readonly owner: string | null;
  readonly location: string | null;
  readonly condition: Condition | null;
}

export function HistoryPane(props: {
  readonly of: CountedPieces;
  readonly onCondition: (condition: Condition | null) => void;
  readonly onClose: () => void;
}): ReactNode {
  const { component, owner, location, condition } = props.of;
  const words = useTimeWords();
  const year = usePlanYear();
  const [chosen, setChosen] = useState<string | null>(null);
  const historyOf = {
    component,
    ...(owner === null ? {} : { owner }),
    ...(location === null ? {} : { location }),
    ...(condition === null ? {} : { condition }),
  };
  const page = useMovements({ historyOf }, setChosen, 100);
  const columns = useMemo(() => historyColumns(words, page.links, year), [words, page.links, year]);
  const row = page.rows.find(({ id }) => id === chosen);
  const title = [
    component,
    owner === null ? null : `of ${owner}`,
    location === null ? null : `at ${location}`,
    condition === null ? null : conditionWords[condition],
  ]
    .filter((part) => part !== null)
    .join(', ');
  return (
    <SidePane title={`History: ${title}`} onClose={props.onClose}>
      <p className="history-of">
        <label>
          Condition{' '}
          <select
            value={condition ?? ''}
            onChange={(event) =>
              props.onCondition(conditions.find((each) => each === event.target.value) ?? null)
            }
          >
            <option value="">any</option>
            {conditions.map((each) => (
              <option key={each} value={each}>
                {conditionWords[each]}
              </option>
            ))}
          </select>
        </label>
        {location === null ? <span className="soft">at all places where pieces are held</span> : null}
      </p>
      {page.error === null ? null : <RefusalNote error={page.error} />}
      {page.answer === undefined ? (
        <Waiting what="Reading the ledger …" />
      ) : (
        <DataTable
          caption={`History of ${title}, newest first`}
          columns={columns}
          rows={page.rows}
          rowKey={rowKey}
          selectedKey={chosen}
          onSelect={(movement: MovementRow) => setChosen(movement.id)}
          tools={<PageButtons page={page} />}
          rowClass={movementClass}
          empty="No movement of it."
        />
      )}
      {row === undefined ? null : (
        <MovementDetail key={row.id} row={row} links={page.links} onClose={() => setChosen(null)} />
      )}
    </SidePane>
  );
}

function rowKey(row: MovementRow): string {
  return row.id;
}

const shownFirst: readonly string[] = ['at', 'reason'];
const shownLater: readonly string[] = ['note', 'places', 'condition', 'owner', 'who', 'remark', 'number'];

const laterWays: Readonly<Record<string, Pick<Column<MovementRow>, 'hidden' | 'width'>>> = {
  note: { hidden: false, width: 96 },
  places: { hidden: false, width: 144 },
  number: { hidden: true },
};

function historyColumns(words: TimeWords, links: LedgerLinks, year: string): readonly Column<MovementRow>[] {
  const known = movementColumns(words, links, true, year).filter(({ id }) => id !== 'quantity');
  return [
    ...known.filter(({ id }) => shownFirst.includes(id)),
    {
      id: 'change',
      header: 'By',
      numeric: true,
      value: (row) => row.change ?? 0,
      show: (row) => signed(row.change ?? 0),
      text: (row) => signed(row.change ?? 0),
      width: 62,
    },
    {
      id: 'after',
      header: 'Then',
      numeric: true,
      value: (row) => row.quantityAfter ?? 0,
      show: (row) => <strong>{groupDigits(String(row.quantityAfter ?? 0))}</strong>,
      width: 62,
    },
    ...shownLater.flatMap((id) =>
      known.filter((column) => column.id === id).map((column) => ({ ...column, ...laterWays[id] })),
    ),
  ];
}

/** With a true minus; nothing where pieces only went from one of the places to another. */
function signed(change: number): string {
  if (change === 0) return '–';
  return change > 0 ? `+${groupDigits(String(change))}` : `−${groupDigits(String(-change))}`;
}
