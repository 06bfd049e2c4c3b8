// Labour by step as the reports have it, beside the rates that the job's planning is set to.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { type Column, DataTable } from '../../parts/data-table.tsx';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { shownRate, stepName } from './rate-words.ts';

type Rate = Output<'dayend.rates'>['rates'][number];

export function RatesPart(): ReactNode {
  const job = useJob();
  const { system } = useUnits();
  const rates = useCore('dayend.rates', { job: job.code });
  const columns = useMemo(() => columnsOf(system), [system]);
  if (rates.error !== null) return <RefusalNote error={rates.error} />;
  if (rates.data === undefined) return null;
  return (
    <section className="day-part" aria-label="Own rates">
      <h2>Own rates</h2>
      {rates.data.rates.length === 0 ? (
        <p className="soft">
          Times and people typed beside a step become the job&rsquo;s own rate for it: hours of one person
          over contact face, or over gangs.
        </p>
      ) : (
        <DataTable
          caption="Labour by step from the reports"
          columns={columns}
          rows={rates.data.rates}
          rowKey={(row) => row.step}
        />
      )}
    </section>
  );
}

function columnsOf(system: 'us' | 'metric'): readonly Column<Rate>[] {
  const perFace = system === 'us' ? 'h/sq ft' : 'h/m²';
  const face = (row: Rate): number | null => (system === 'us' ? row.perFt2 : row.perM2);
  return [
    { id: 'step', header: 'Step', value: (row) => stepName(row.step), width: 96 },
    { id: 'records', header: 'Records', value: (row) => row.records, numeric: true, width: 74 },
    { id: 'hours', header: 'Hours of people', value: (row) => row.personHours, text: (row) => row.personHours.toFixed(1), show: (row) => row.personHours.toFixed(1), numeric: true, width: 118 },
    { id: 'face', header: perFace, value: (row) => face(row) ?? -1, text: (row) => shownRate(face(row)), show: (row) => shownRate(face(row)), numeric: true, width: 80 },
    { id: 'gang', header: 'h a gang', value: (row) => row.perGang ?? -1, text: (row) => shownRate(row.perGang), show: (row) => shownRate(row.perGang), numeric: true, width: 84 },
    { id: 'set', header: 'Set now', value: setNow, width: 280 },
  ]; // prettier-ignore
}

function setNow(row: Rate): string {
  if (row.inSettings.length === 0) return 'none set';
  return row.inSettings
    .map(
      ({ personHours, unit, owner, source }) =>
        `${personHours} ${unit}, ${owner}${source === null ? ', default' : ''}`,
    )
    .join('; ');
}
