// The strip along the bottom of every screen, as the title block of a drawing: which job, planned from
// when, in which units, from which book, through which door, and whether it can be written. On paper also
// which screen it is and when it was printed, and none of what is only pressed.
import type { ReactNode } from 'react';
import { useSearch } from 'wouter';
import { type HostOutput, useCore } from '../client/core.tsx';
import { useAddressQuery } from '../client/query.ts';
import { Choice } from './choice.tsx';
import type { Job } from './job.tsx';
import { PrintedWhen } from './printed-cell.tsx';
import { type ThemeChoice, useTheme } from './theme.tsx';
import { dateWords } from './time-words.ts';
import { useUnits } from './units.tsx';

export function TitleBlock(props: {
  readonly host: HostOutput<'host.state'>;
  readonly jobs: readonly Job[];
  readonly job: Job | null;
  /** Name of the screen above. */
  readonly screen: string;
}): ReactNode {
  const { host, job, screen } = props;
  return (
    <footer className="title-block" aria-label="Job, units, book">
      <JobCell jobs={props.jobs} job={job} />
      {job === null ? null : <PlannedFrom job={job.code} />}
      <UnitsCell />
      <ThemeCell />
      <Cell label="Book" wide>
        <span title={host.book?.file}>{host.book?.name ?? 'none'}</span>
        {host.book?.readOnly === true ? (
          <span className="caution-word-ink"> · read only: another app has it open</span>
        ) : null}
      </Cell>
      <Cell label="Signed in as">{host.who}</Cell>
      <Cell label="Screen" only="paper">
        {screen}
      </Cell>
      <Cell label="Printed" only="paper">
        <PrintedWhen job={job} screen={screen} who={host.who} />
      </Cell>
      <Cell label="Door" only="screen">
        {host.door === 'desktop' ? 'desktop' : 'browser'}
      </Cell>
    </footer>
  );
}

function Cell(props: {
  readonly label: string;
  readonly wide?: boolean;
  readonly strong?: boolean;
  /** Where it is shown; else on both. */
  readonly only?: 'paper' | 'screen';
  readonly children: ReactNode;
}): ReactNode {
  const place = props.only === undefined ? '' : props.only === 'paper' ? ' on-paper' : ' off-paper';
  return (
    <div className={`title-cell${props.wide === true ? ' wide' : ''}${place}`}>
      <span className="title-label">{props.label}</span>
      <span className={props.strong === true ? 'title-value strong' : 'title-value'}>{props.children}</span>
    </div>
  );
}

function JobCell(props: { readonly jobs: readonly Job[]; readonly job: Job | null }): ReactNode {
  const [, change] = useAddressQuery();
  const { job } = props;
  if (job === null) return <Cell label="Job">none yet</Cell>;
  if (props.jobs.length === 1) {
    return (
      <Cell label="Job" strong>
        {job.code} {job.name}
      </Cell>
    );
  }
  return (
    <Cell label="Job" strong>
      <select
        aria-label="Job"
        value={job.code}
        onChange={(event) => change({ job: event.target.value }, { step: true })}
      >
        {props.jobs.map((one) => (
          <option key={one.code} value={one.code}>
            {one.code} {one.name}
          </option>
        ))}
      </select>
    </Cell>
  );
}

/** The day from which the job is planned, and the part of the board on screen where that is another. */
function PlannedFrom(props: { readonly job: string }): ReactNode {
  const board = useCore('board.read', { job: props.job });
  const shown = new URLSearchParams(useSearch()).get('from');
  if (board.data === undefined) return <Cell label="Planned from">…</Cell>;
  const from = board.data.job.planFrom;
  return (
    <Cell label="Planned from">
      {dateWords(from)} {from.slice(0, 4)}
      {shown === null || shown === from ? null : (
        <span className="soft"> · shown from {dateWords(shown)}</span>
      )}
    </Cell>
  );
}

function UnitsCell(): ReactNode {
  const units = useUnits();
  return (
    <Cell label="Units">
      <Choice
        label="Units"
        value={units.system}
        options={[
          ['us', 'ft-in'],
          ['metric', 'metric'],
        ]}
        onChange={units.setSystem}
      />
      <span className="on-paper">{units.system === 'us' ? 'ft-in' : 'metric'}</span>
    </Cell>
  );
}

const themeNames: readonly (readonly [ThemeChoice, string])[] = [
  ['system', 'system'],
  ['light', 'light'],
  ['dark', 'dark'],
];

function ThemeCell(): ReactNode {
  const theme = useTheme();
  return (
    <Cell label="Theme" only="screen">
      <Choice label="Theme" value={theme.choice} options={themeNames} onChange={theme.setChoice} />
    </Cell>
  );
}
