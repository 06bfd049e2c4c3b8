// The sequence of pours: a table that is written in place, and under it the chosen pour in full. Its code
// stands in the address.
import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { useParams } from 'wouter';
import { go } from '../../client/address.ts';
import { useCore } from '../../client/core.tsx';
import { useJob } from '../../parts/job.tsx';
import type { JobClock } from '../../parts/job-clock.ts';
import { useJobClock } from '../../parts/job-time.ts';
import { CautionLine, Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { DatesPanel } from './dates-panel.tsx';
import { firstPour } from './first-pour.ts';
import { filteredPours } from './pour-columns.ts';
import { PlacePanel } from './place-panel.tsx';
import { PourDetail } from './pour-detail.tsx';
import { PourGrid } from './pour-grid.tsx';
import type { CellContext, PourList } from './pour-shapes.ts';
import { PourTools } from './pour-tools.tsx';
import { usePourEdits } from './use-pour-edits.ts';
import './pours.css';
import './dates.css';

export function PoursScreen(): ReactNode {
  const job = useJob();
  const list = useCore('pour.list', { job: job.code });
  const clock = useJobClock();
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined || clock === null) return <Waiting what="Reading the pours …" />;
  return <Pours list={list.data} clock={clock} />;
}

function Pours(props: { readonly list: PourList; readonly clock: JobClock }): ReactNode {
  const { list, clock } = props;
  const { code } = useParams<{ code?: string }>();
  const job = useJob();
  const { system } = useUnits();
  const context = useMemo<CellContext>(
    () => ({ timeZone: clock.timeZone, system }),
    [clock.timeZone, system],
  );
  const [filter, setFilter] = useState('');
  const [said, setSaid] = useState('');
  const [panel, setPanel] = useState<'dates' | 'place' | null>(null);
  const undated = list.pours.filter(({ dateOpen }) => dateOpen).map(({ pour }) => pour.code);
  const closePanel = useCallback(() => setPanel(null), []);
  const edits = usePourEdits(job.code, list.pours, context);
  const rows = useMemo(() => filteredPours(list.pours, filter, context), [list.pours, filter, context]);
  const asked = code === undefined || code === '' ? null : decodeURIComponent(code);
  const row = rows.find(({ pour }) => pour.code === asked) ?? rows[0];
  const choose = useCallback((next: string) => {
    const to = `/pours/${encodeURIComponent(next)}`;
    if (!location.hash.startsWith(`#${to}`) || location.hash.length !== to.length + 1)
      go(to, { replace: true });
  }, []);

  if (list.pours.length === 0) {
    return (
      <Empty title="No pours yet">
        <p>
          A pour is one placement of concrete with its two sides. Import them from a CSV file on the{' '}
          <a href="#/book">Book</a> screen, or begin with one and copy it.
        </p>
        <button
          type="button"
          className="primary"
          onClick={() => void edits.add(firstPour(clock), 'first pour added')}
        >
          Add a pour
        </button>
        {edits.error === null ? null : <RefusalNote error={edits.error} />}
      </Empty>
    );
  }
  return (
    <div className="screen pours">
      <header className="screen-head">
        <h1>Pours</h1>
        <PourTools
          rows={rows}
          count={list.pours.length}
          codes={list.pours.map(({ pour }) => pour.code)}
          row={row}
          context={context}
          filter={filter}
          onFilter={setFilter}
          edits={edits}
          onChoose={choose}
          onSay={setSaid}
          undated={undated.length}
          onPlace={() => setPanel('place')}
        />
      </header>
      <output className="pour-said">{said}</output>
      {edits.error === null ? null : <RefusalNote error={edits.error} />}
      <PourGrid
        rows={rows}
        context={context}
        chosen={row?.pour.code ?? null}
        edits={edits}
        onChoose={choose}
        onSay={setSaid}
      />
      {panel === 'place' && undated.length > 0 ? (
        <PlacePanel pours={undated} timeZone={context.timeZone} onClose={closePanel} onSay={setSaid} />
      ) : row === undefined ? (
        <p className="waiting">No pour has these words.</p>
      ) : panel === 'dates' ? (
        <DatesPanel
          key={row.pour.code}
          pour={row.pour.code}
          timeZone={context.timeZone}
          onClose={closePanel}
          onSay={setSaid}
        />
      ) : (
        <PourDetail
          key={row.pour.code}
          row={row}
          context={context}
          edits={edits}
          onDates={() => setPanel('dates')}
        />
      )}
      <CautionLine />
    </div>
  );
}
