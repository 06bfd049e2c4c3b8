// What will be short: one line a component and interval, with who holds the pieces and what hiring the
// missing ones would cost. Under it, what is next to break.
import { type ReactNode, useMemo } from 'react';
import { Link } from 'wouter';
import { useCore, useHostState } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { DataTable } from '../../parts/data-table.tsx';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { CautionLine, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { Patterns } from '../../parts/patterns.tsx';
import { timeWords } from '../../parts/time-words.ts';
import { paperSheetAddress } from '../../parts/paper-sheets.ts';
import { useUnits } from '../../parts/units.tsx';
import { YardList, YardStrip } from '../../parts/yard-strip.tsx';
import { ShortfallPane } from './shortfall-pane.tsx';
import { makeColumns } from './shortfall-columns.tsx';
import type { Shortfall } from './shortfall-rows.ts';
import { TightList } from './tight-list.tsx';
import { useCheapest } from './use-cheapest.ts';
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
  const readOnly = useHostState().data?.book?.readOnly === true;
  const { cheapest, looking } = useCheapest(job.code, list.data?.shortfalls ?? nothing, live);
  const decisions = useMemo(
    () => new Map((list.data?.decisions ?? []).map((each) => [each.shortfall, each])),
    [list.data],
  );
  const words = useMemo(
    () => (board.data === undefined ? null : timeWords(board.data.job.timeZone)),
    [board.data],
  );
  const currency = list.data?.currency ?? 'USD';
  const { money } = units;
  const columns = useMemo(
    () =>
      words === null
        ? []
        : makeColumns({
            words,
            money: (cents) => money(cents, currency),
            currency,
            cheapest,
            looking,
            decisions,
          }),
    [words, money, currency, cheapest, looking, decisions],
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
        <Link href={paperSheetAddress('shortfalls', job.code)}>Shortfall sheet</Link>
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
            decision={decisions.get(chosen.id)}
            readOnly={readOnly}
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

const nothing: readonly Shortfall[] = [];
