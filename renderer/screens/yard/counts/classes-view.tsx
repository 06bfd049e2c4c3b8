// The class of every component, when it is due, and how counts are made here. A class is changed in its row.
import { type ReactNode, useMemo } from 'react';
import { type Output, useCore } from '../../../client/core.tsx';
import { type Column, DataTable } from '../../../parts/data-table.tsx';
import { useJob } from '../../../parts/job.tsx';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { shortDate } from '../../../parts/time-words.ts';
import { useUnits } from '../../../parts/units.tsx';
import { CountSettings } from './count-settings.tsx';
import { classByWords } from './count-words.ts';
import { useSettings } from './use-settings.ts';

type Row = Output<'count.classes'>['components'][number];

export function ClassesView(): ReactNode {
  const classes = useCore('count.classes', {});
  const settings = useSettings();
  const currency = useCurrency();
  const { money } = useUnits();
  const columns = useMemo(
    () => columnsOf(settings.setClass, settings.settings?.classes ?? {}, (cents) => money(cents, currency)),
    [settings.setClass, settings.settings, money, currency],
  );
  if (classes.error !== null) return <RefusalNote error={classes.error} />;
  if (classes.data === undefined) return <Waiting what="Ranking the components …" />;
  const due = classes.data.components.filter((each) => each.isDue).length;
  return (
    <>
      <CountSettings settings={settings} />
      <p className="counts-accuracy">
        {classes.data.classes
          .map(
            (each) => `${each.class}: ${each.countsAYear} a year, within ${each.tolerancePercent} % of book`,
          )
          .join(' · ')}{' '}
        <span className="soft">
          (published in inventory record accuracy notes; locks, bolts and clips weekly on busy jobs: common
          practice, no source)
        </span>{' '}
        · <b>{due} due</b>
      </p>
      {settings.error === null ? null : <RefusalNote error={settings.error} />}
      <DataTable
        caption="Classes of components"
        columns={columns}
        rows={classes.data.components}
        rowKey={rowKey}
        sortBy="class"
        filterLabel="Filter"
      />
    </>
  );
}

/** Of the job: the book knows no other. */
function useCurrency(): string {
  const job = useJob();
  const list = useCore('shortfall.list', { job: job.code });
  return list.data?.currency ?? 'USD';
}

function rowKey(row: Row): string {
  return row.component;
}

function columnsOf(
  setClass: (component: string, to: 'A' | 'B' | 'C' | null) => void,
  byHand: Readonly<Record<string, string>>,
  money: (cents: number) => string,
): readonly Column<Row>[] {
  const each = (row: Row): number => row.valueCents ?? row.hirePerDayCents ?? 0;
  const eachWords = (row: Row): string =>
    row.valueCents !== null
      ? money(row.valueCents)
      : row.hirePerDayCents === null
        ? 'not entered'
        : `${money(row.hirePerDayCents)} a day`;
  return [
    { id: 'component', header: 'Component', value: (row) => row.component, width: 100 },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 210 },
    { id: 'class', header: 'Class', value: (row) => row.class, width: 70 },
    { id: 'by', header: 'Why', value: (row) => classByWords[row.by], width: 190 },
    {
      id: 'set',
      header: 'By hand',
      value: (row) => byHand[row.component] ?? '',
      width: 110,
      show: (row) => (
        <select
          aria-label={`Class of ${row.component} by hand`}
          value={byHand[row.component] ?? ''}
          onChange={(event) => {
            const to = (['A', 'B', 'C'] as const).find((place) => place === event.target.value);
            setClass(row.component, to ?? null);
          }}
        >
          <option value="">as ranked</option>
          <option value="A">A</option>
          <option value="B">B</option>
          <option value="C">C</option>
        </select>
      ),
    },
    { id: 'held', header: 'Held', value: (row) => row.held, numeric: true, width: 80 },
    {
      id: 'each',
      header: 'One piece',
      value: each,
      show: eachWords,
      text: eachWords,
      numeric: true,
      width: 120,
    },
    {
      id: 'share',
      header: 'Share',
      value: (row) => row.sharePercent ?? -1,
      show: (row) => (row.sharePercent === null ? '' : `${Math.round(row.sharePercent * 10) / 10} %`),
      numeric: true,
      width: 80,
    },
    {
      id: 'last',
      header: 'Last counted',
      value: (row) => row.lastCountedOn ?? '',
      show: (row) => date(row.lastCountedOn, 'never'),
      width: 130,
    },
    {
      id: 'due',
      header: 'Due',
      value: (row) => row.due ?? '',
      show: (row) => (row.isDue ? <b>{date(row.due, 'now')}, due</b> : date(row.due, 'nothing lies loose')),
      text: (row) => (row.isDue ? `${date(row.due, 'now')}, due` : date(row.due, '')),
      width: 150,
    },
  ];
}

function date(on: string | null, none: string): string {
  return on === null ? none : `${shortDate(on)} ${on.slice(0, 4)}`;
}
