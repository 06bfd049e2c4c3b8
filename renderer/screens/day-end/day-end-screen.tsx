// Day's end in two minutes: one list of what was planned, ticked by one key, with what will move before it is saved;
// under it misses by week and the job's own rates.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useCore } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { CautionLine, Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { paperSheetAddress } from '../../parts/paper-sheets.ts';
import { dateWords, timeWords } from '../../parts/time-words.ts';
import { BoardTabs } from '../board/board-tabs.tsx';
import type { DayRead } from './day-draft.ts';
import { DayForm } from './day-form.tsx';
import { MissesPart } from './misses-part.tsx';
import { RatesPart } from './rates-part.tsx';
import './day-end.css';

export function DayEndScreen(): ReactNode {
  const job = useJob();
  const live = useLiveNow(job.code);
  const [query] = useAddressQuery();
  const date = query.get('date');
  const day = useCore('dayend.read', { job: job.code, ...(date === null ? live : { date }) });
  const board = useCore('board.read', { job: job.code, ...live });
  if (day.error !== null) return <RefusalNote error={day.error} />;
  if (day.data === undefined || board.data === undefined) return <Waiting what="Reading the day …" />;
  const words = timeWords(day.data.timeZone);
  return (
    <div className="screen day-end">
      <DayHead day={day.data} time={words.full} />
      <div className="screen-body">
        <div className="pane grow day-main">
          {day.data.lines.length === 0 ? (
            <NothingPlanned day={day.data} />
          ) : (
            <DayForm
              // Another day, or the day ended or taken back meanwhile: what was said begins anew.
              key={`${day.data.date} ${day.data.report?.id ?? ''}`}
              day={day.data}
              words={words}
              currency={board.data.job.currency}
            />
          )}
          <MissesPart />
          <RatesPart />
        </div>
      </div>
      <CautionLine />
    </div>
  );
}

function DayHead(props: { readonly day: DayRead; readonly time: (at: string) => string }): ReactNode {
  const { day, time } = props;
  const job = useJob();
  const { report, notEnded } = day;
  return (
    <header className="screen-head day-head">
      <h1>End of {dateWords(day.date)}</h1>
      <nav className="day-days off-paper" aria-label="Days">
        {day.before === null ? null : <Link href={addressOf(day.before)}>← {dateWords(day.before)}</Link>}
        {day.after === null ? null : <Link href={addressOf(day.after)}>{dateWords(day.after)} →</Link>}
        <Link href={paperSheetAddress('day', `${job.code}@${day.date}`)}>Day sheet</Link>
        <Link href={paperSheetAddress('week', job.code)}>Week plan</Link>
      </nav>
      <span className="day-state">
        {report === null
          ? 'not ended'
          : `ended ${time(report.at)} by ${report.who}${report.corrections === 0 ? '' : `, corrected ${report.corrections === 1 ? 'once' : `${report.corrections} times`}`}`}
      </span>
      {notEnded.length === 0 ? null : (
        <span className="caution-word-ink">
          Still to be ended:{' '}
          {notEnded.map((date) => (
            <Link key={date} href={addressOf(date)}>
              {dateWords(date)}{' '}
            </Link>
          ))}
        </span>
      )}
      <BoardTabs />
    </header>
  );
}

function NothingPlanned(props: { readonly day: DayRead }): ReactNode {
  const { day } = props;
  const other = day.after ?? day.before;
  return (
    <Empty title={`Nothing is planned for ${dateWords(day.date)}`}>
      <p>
        The steps of a day stand here in the evening: what happened is ticked, what did not goes on to the
        next shift with its reason.{' '}
        {other === null ? (
          <Link href="/pours">Enter pours, and their steps come by themselves.</Link>
        ) : (
          <Link href={addressOf(other)}>Go to {dateWords(other)}.</Link>
        )}
      </p>
    </Empty>
  );
}

function addressOf(date: string): string {
  return `/board/day-end?date=${date}`;
}
