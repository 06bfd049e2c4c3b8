// Crew and crane: what every day asks of people, crane and pads against what there is, with exceptions of the calendar and
// bookings of the crane; the settings behind it; and what is entered of pours beside their dates.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useCore, useHostState } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { CautionLine, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { timeWords } from '../../parts/time-words.ts';
import { BoardTabs } from '../board/board-tabs.tsx';
import { DaysView } from './days-view.tsx';
import { PoursView } from './pours-view.tsx';
import { SettingsView } from './settings-view.tsx';
import type { Work } from './work-words.ts';
import '../../style/panes.css';
import '../board/why.css';
import './work.css';

const views = [
  { view: null, name: 'Days' },
  { view: 'settings', name: 'Settings' },
  { view: 'pours', name: 'Holds and reach' },
] as const;

export function WorkScreen(): ReactNode {
  const job = useJob();
  const live = useLiveNow(job.code);
  const [query, change] = useAddressQuery();
  const work = useCore('work.read', { job: job.code, ...live });
  const readOnly = useHostState().data?.book?.readOnly === true;
  if (work.error !== null) return <RefusalNote error={work.error} />;
  if (work.data === undefined) return <Waiting what="Planning the job …" />;
  const view = query.get('view');
  const words = timeWords(work.data.job.timeZone);
  return (
    <div className="screen work">
      <header className="screen-head">
        <h1>{headWords(work.data)}</h1>
        <nav className="work-views" aria-label="Views of crew and crane">
          {views.map((each) => (
            <Link
              key={each.name}
              href={each.view === null ? '/board/work' : `/board/work?view=${each.view}`}
              aria-current={each.view === view ? 'page' : undefined}
            >
              {each.name}
            </Link>
          ))}
        </nav>
        <BoardTabs />
      </header>
      {work.data.findings.map((finding) => (
        <p key={finding.message} className={`note note-${finding.severity}`}>
          <span className="note-word">{finding.severity}</span>
          <span>{finding.message}</span>
        </p>
      ))}
      {view === 'settings' ? (
        <SettingsView readOnly={readOnly} />
      ) : view === 'pours' ? (
        <PoursView
          work={work.data}
          words={words}
          readOnly={readOnly}
          chosen={query.get('pour')}
          onChoose={(pour) => change({ pour })}
        />
      ) : (
        <DaysView
          work={work.data}
          words={words}
          readOnly={readOnly}
          chosen={query.get('day')}
          onChoose={(day) => change({ day })}
        />
      )}
      <CautionLine about="Crane hours say when, not whether: each pick is checked by itself, slings and wind with it." />
    </div>
  );
}

function headWords({ overloads }: Work): string {
  const days = new Set(overloads.map(({ date }) => date)).size;
  if (days === 0) return 'Crew and crane: every day is within what is there';
  return `Crew and crane: too much on ${days === 1 ? 'one day' : `${days} days`}`;
}
