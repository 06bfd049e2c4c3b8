// What will be short: one line a component and interval, with who holds the pieces and what hiring the
// missing ones would cost. Under it, what is next to break.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { type Column, DataTable } from '../../parts/data-table.tsx';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { CautionLine, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { Patterns } from '../../parts/patterns.tsx';
import { type TimeWords, timeWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import { YardList, YardStrip } from '../../parts/yard-strip.tsx';
import { ShortfallPane } from './shortfall-pane.tsx';
import { daysOf, hireWords, holderWords, figureWords, type Shortfall, spanWords } from './shortfall-rows.ts';
import { TightList } from './tight-list.tsx';
import '../../style/board-head.css';
import '../../style/board.css';
import '../../style/board-marks.css';
import '../../style/board-foot.css';
import '../../style/panes.css';
import '../../style/shortfalls.css';

export function ShortfallsScreen(): ReactNode {
  const job = useJob();
  const live = useLiveNow(job.code);
  const list = useCore('shortfall.list', { job: job.code, ...live });
  const board = useCore('board.read', { job: job.code, ...live });
  const [query, change] = useAddressQuery();
  const units = useUnits();
  const words = useMemo(
    () => (board.data === undefined ? null : timeWords(board.data.job.timeZone)),
    [board.data],
  );
  const currency = list.data?.currency ?? 'USD';
  const { money } = units;
  const columns = useMemo(
    () => (words === null ? [] : makeColumns(words, (cents) => money(cents, currency))),
    [words, money, currency],
  );
  const error = list.error ?? board.error;
  if (error !== null) return <RefusalNote error={error} />;
  if (list.data === undefined || board.data === undefined || words === null) {
    return <Waiting what="Planning the job …" />;
  }
  const { shortfalls, tightest, yardNotes } = list.data;
  const id = query.get('short');
  const chosen = shortfalls.find((one) => one.id === id);
  const select = (short: string | null): void => change({ short });
  return (
    <div className="screen">
      <Patterns />
      <header className="screen-head">
        <h1>{headWords(shortfalls)}</h1>
        {list.data.hireCents > 0 ? (
          <span className="soft">
            Hiring everything that can be hired, for just these days: {money(list.data.hireCents, currency)}
          </span>
        ) : null}
      </header>
      <YardStrip notes={yardNotes} words={words} />
      <div className="screen-body">
        <div className="pane grow shortfalls">
          {shortfalls.length === 0 ? (
            <p className="none-short">
              The plan has every component ready on its day. What is closest to running out stands below.
            </p>
          ) : (
            <DataTable
              caption="Shortfalls"
              columns={columns}
              rows={shortfalls}
              rowKey={(row) => row.id}
              selectedKey={id}
              onSelect={(row) => select(row.id === id ? null : row.id)}
              sortBy="from"
              filterLabel="Filter"
            />
          )}
          <YardList
            notes={yardNotes}
            words={words}
            isOpen={query.get('yard') !== null}
            onToggle={(open) => change({ yard: open ? 'open' : null })}
          />
          <TightList tightest={tightest} words={words} />
        </div>
        {chosen === undefined ? null : (
          <ShortfallPane
            shortfall={chosen}
            board={board.data}
            words={words}
            currency={currency}
            notes={yardNotes.filter((note) => note.shortfalls.includes(chosen.id))}
            onClose={() => select(null)}
          />
        )}
      </div>
      <CautionLine about="Hire sums follow the rates entered; the agreement decides." />
    </div>
  );
}

function headWords(shortfalls: readonly Shortfall[]): string {
  if (shortfalls.length === 0) return 'Nothing is short';
  const components = new Set(shortfalls.map((one) => one.component)).size;
  return shortfalls.length === 1
    ? '1 shortfall'
    : `${shortfalls.length} shortfalls of ${components} ${components === 1 ? 'component' : 'components'}`;
}

function makeColumns(words: TimeWords, money: (cents: number) => string): readonly Column<Shortfall>[] {
  return [
    {
      id: 'quantity',
      header: 'Short',
      value: (row) => row.quantity,
      numeric: true,
      width: 72,
      show: (row) => (
        <span className="short-number">
          <span className="short-block" aria-hidden="true" />
          {row.quantity}
        </span>
      ),
    },
    {
      id: 'component',
      header: 'Component',
      value: (row) => `${row.component} ${row.name}`,
      width: 222,
      show: (row) => (
        <>
          <b>{row.component}</b> {row.name}
        </>
      ),
    },
    {
      id: 'from',
      header: 'From – to',
      value: (row) => Date.parse(row.from),
      text: (row) => spanWords(row.from, row.to, words),
      show: (row) => spanWords(row.from, row.to, words),
      width: 286,
    },
    {
      id: 'held',
      header: 'Held',
      value: (row) => row.held,
      numeric: true,
      width: 56,
    },
    { id: 'stock', header: 'Stock', value: (row) => row.stock, numeric: true, width: 56 },
    {
      id: 'hire',
      header: 'Way out by hire',
      value: (row) => row.hireCents ?? -1,
      text: (row) => hireWords(row, daysOf(row, words), money),
      show: (row) =>
        row.canBeHired ? (
          hireWords(row, daysOf(row, words), money)
        ) : (
          <span className="short-word">cannot be hired</span>
        ),
      width: 190,
    },
    {
      id: 'holders',
      header: 'Held by',
      value: (row) => holderWords(row),
      width: 274,
    },
    {
      id: 'rests',
      header: 'Rests on',
      value: figureWords,
      show: (row) =>
        row.restsOn === 'counted' && !row.restsOnOld ? (
          'counted'
        ) : (
          <span className="caution-word-ink">{figureWords(row)}</span>
        ),
      width: 110,
    },
  ];
}
