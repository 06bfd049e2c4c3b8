// Misses of the last weeks by reason, and labour out of the reports beside the rates that are set.
import type { ReactNode } from 'react';
import { useCore } from '../../client/core.tsx';
import { DataTable, type Column } from '../../parts/data-table.tsx';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import { shortDate } from '../../parts/time-words.ts';
import type { Output } from '../../client/shapes.ts';

type Week = Output<'dayend.misses'>['weeks'][number];

const columns: readonly Column<Week>[] = [
  { id: 'week', header: 'Week of', value: (row) => row.week, show: (row) => shortDate(row.week), text: (row) => shortDate(row.week), width: 84 },
  { id: 'days', header: 'Days ended', value: (row) => row.daysEnded, numeric: true, width: 90 },
  { id: 'planned', header: 'Steps planned', value: (row) => row.planned, numeric: true, width: 104 },
  { id: 'done', header: 'Done on the day', value: (row) => row.done, text: doneWords, show: doneWords, numeric: true, width: 150 },
  { id: 'reasons', header: 'Not done, by reason', value: reasonWords, width: 320 },
  { id: 'left', header: 'Left over, done since', value: (row) => row.leftOver, text: leftWords, show: leftWords, numeric: true, width: 140 },
]; // prettier-ignore

export function MissesPart(): ReactNode {
  const job = useJob();
  const misses = useCore('dayend.misses', { job: job.code });
  if (misses.error !== null) return <RefusalNote error={misses.error} />;
  if (misses.data === undefined) return null;
  return (
    <section className="day-part" aria-label="Misses by week">
      <h2>Misses by week</h2>
      {misses.data.weeks.length === 0 ? (
        <p className="soft">
          No day was ended yet. Each one adds to its week: steps planned, done on the day, not done and why.
        </p>
      ) : (
        <DataTable
          caption="Misses by week"
          columns={columns}
          rows={misses.data.weeks}
          rowKey={(row) => row.week}
        />
      )}
    </section>
  );
}

function doneWords(row: Week): string {
  return row.donePercentOfPlanned === null ? '0' : `${row.done}, ${row.donePercentOfPlanned} % of planned`;
}

function reasonWords(row: Week): string {
  return row.notDone.map(({ words, steps }) => `${steps} ${words}`).join(', ');
}

function leftWords(row: Week): string {
  return row.leftOver === 0 ? '' : `${row.leftOver}, ${row.leftOverDone}`;
}
