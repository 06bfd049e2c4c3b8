// Labour by step as the reports have it, beside the rates that the job's planning is set to.
import { type ReactNode, useMemo } from 'react';
import { Button } from 'react-aria-components';
import { useCommand, useCore } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { type Column, DataTable } from '../../parts/data-table.tsx';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import { useUndo } from '../../parts/undo.tsx';
import { useUnits } from '../../parts/units.tsx';
import { shownRate, stepName, unitWords } from './rate-words.ts';

type Rate = Output<'dayend.rates'>['rates'][number];
type Offer = NonNullable<Rate['offered']>;

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
      <Offers rates={rates.data.rates} />
    </section>
  );
}

/** Nothing becomes the job's rate by itself: one press a step, and it can be undone. */
function Offers(props: { readonly rates: readonly Rate[] }): ReactNode {
  const job = useJob().code;
  const planning = useCore('planning.read', { job });
  const save = useCommand('planning.save');
  const { remember } = useUndo();
  const settings = planning.data?.settings;
  const offers = props.rates.flatMap(({ offered }) => offered ?? []);
  if (settings === undefined || offers.length === 0) return null;
  const take = async (rate: Offer): Promise<void> => {
    const others = settings.labourRates.filter(({ step }) => step !== rate.step);
    const next = { ...settings, labourRates: [...others, rate] };
    try {
      await save.mutateAsync({ job, settings: next });
    } catch {
      // Said under the buttons.
      return;
    }
    remember({
      words: `the rate of ${stepName(rate.step)}`,
      undo: () => save.mutateAsync({ job, settings }),
      redo: () => save.mutateAsync({ job, settings: next }),
    });
  };
  return (
    <div className="day-offers off-paper">
      {offers
        .filter((rate) => !settings.labourRates.some((each) => isSame(each, rate)))
        .map((rate) => (
          <Button key={rate.step} isDisabled={save.isPending} onPress={() => void take(rate)}>
            Plan to {stepName(rate.step)} at {rate.personHours} {unitWords[rate.unit]}
          </Button>
        ))}
      {save.error === null ? null : <RefusalNote error={save.error} />}
    </div>
  );
}

function isSame(one: Offer, other: Offer): boolean {
  return (
    one.step === other.step &&
    one.unit === other.unit &&
    one.personHours === other.personHours &&
    one.owner === other.owner
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
        `${personHours} ${unitWords[unit]}, ${owner}${source === null ? ', default' : ''}`,
    )
    .join('; ');
}
