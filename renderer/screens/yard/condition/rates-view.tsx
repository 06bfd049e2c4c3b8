// Loss and damage by turn of every component the job uses, with what each rate rests on, the spares that follow, and the
// settings behind them.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../../client/core.tsx';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useJob } from '../../../parts/job.tsx';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { useSettings } from '../counts/use-settings.ts';
import { basisWords, type RateRow, rateWords } from './care-words.ts';
import { NumberSetting } from './number-setting.tsx';

export function RatesView(): ReactNode {
  const job = useJob();
  const rates = useCore('yard.rates', { job: job.code });
  const { settings, set, error } = useSettings();
  const columns = useMemo(() => columnsOf(), []);
  if (rates.error !== null) return <RefusalNote error={rates.error} />;
  if (rates.data === undefined || settings === undefined)
    return <Waiting what="Adding up what was lost and damaged …" />;
  return (
    <div className="pane grow yard-main">
      {error === null ? null : <RefusalNote error={error} />}
      <div className="care-settings">
        <label className="tick">
          <input
            type="checkbox"
            checked={settings.keepSpares}
            onChange={(event) =>
              set(
                { keepSpares: event.target.checked },
                event.target.checked ? 'keep spares back' : 'keep no spares back',
              )
            }
          />
          plans keep the spares back
        </label>
        <NumberSetting
          label="Own record after"
          value={settings.turnsForOwnRate}
          most={10_000}
          after="turns"
          onSet={(turns) =>
            turns === null
              ? undefined
              : set({ turnsForOwnRate: turns }, `trust the own record after ${turns} turns`)
          }
        />
        <NumberSetting
          label="A figure is old after"
          value={settings.figureOldAfterDays}
          most={3650}
          after="days"
          onSet={(days) =>
            days === null
              ? undefined
              : set({ figureOldAfterDays: days }, `call figures old after ${days} days`)
          }
        />
        <span className="soft">Defaults are common practice, no source.</span>
      </div>
      <DataTable
        caption="Loss and damage by turn, and spares"
        columns={columns}
        rows={rates.data.rates}
        rowKey={(row: RateRow) => row.component}
        sortBy="-spare"
        filterLabel="Filter"
        empty={
          <Empty title="The job uses no component yet">
            <p>Rates and spares follow from the gangs and loose pieces of its pours.</p>
          </Empty>
        }
      />
    </div>
  );
}

function columnsOf(): readonly Column<RateRow>[] {
  return [
    {
      id: 'component',
      header: 'Component',
      value: (row) => row.component,
      show: (row) => <b>{row.component}</b>,
      width: 110,
    },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 190 },
    { id: 'turns', header: 'Turns', value: (row) => row.turns, numeric: true, width: 70 },
    { id: 'pieces', header: 'Expected back', value: (row) => row.pieces, numeric: true, width: 110 },
    { id: 'lost', header: 'Lost', value: (row) => row.lost, numeric: true, width: 70 },
    { id: 'damaged', header: 'Damaged', value: (row) => row.damaged, numeric: true, width: 90 },
    { id: 'rate', header: 'Rate a turn', value: (row) => rateWords(row.used), width: 150 },
    {
      id: 'basis',
      header: 'Rests on',
      value: (row) => basisWords(row.used, row.turns),
      show: (row) =>
        row.used.basis === 'own' ? (
          basisWords(row.used, row.turns)
        ) : (
          <span className="basis-weak">{basisWords(row.used, row.turns)}</span>
        ),
      width: 160,
    },
    { id: 'most', header: 'Most held at once', value: (row) => row.mostHeld, numeric: true, width: 140 },
    {
      id: 'spare',
      header: 'Spares',
      value: (row) => row.spare,
      show: (row) => <b>{row.spare}</b>,
      numeric: true,
      width: 80,
    },
  ];
}
