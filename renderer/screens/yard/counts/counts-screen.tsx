// The counts of the yard, how right its records are, what looks alike, and how counts are made here.
import type { ReactNode } from 'react';
import { useAddressQuery } from '../../../client/query.ts';
import { Choice } from '../../../parts/choice.tsx';
import { CautionLine } from '../../../parts/notes.tsx';
import { YardTabs } from '../yard-tabs.tsx';
import { ClassesView } from './classes-view.tsx';
import { CountsList } from './counts-list.tsx';
import { LookAlikesView } from './look-alikes-view.tsx';
import { StartPane } from './start-pane.tsx';
import '../yard.css';
import './counts.css';

const views = [
  ['counts', 'Counts'],
  ['look-alikes', 'Look-alikes'],
  ['classes', 'Classes and settings'],
] as const;

export function CountsScreen(): ReactNode {
  const [query, change] = useAddressQuery();
  const view = views.find(([name]) => name === query.get('show'))?.[0] ?? 'counts';
  const isStarting = view === 'counts' && query.get('start') !== null;
  return (
    <div className="screen yard">
      <header className="screen-head">
        <h1>Yard</h1>
        <YardTabs />
        <Choice
          label="What of the counts"
          value={view}
          options={views}
          onChange={(next) => change({ show: next === 'counts' ? null : next, start: null }, { step: true })}
        />
        <button
          type="button"
          className="primary head-end"
          aria-expanded={isStarting}
          onClick={() => change({ show: null, start: isStarting ? null : 'spot' })}
        >
          Start a count
        </button>
      </header>
      <div className="screen-body">
        <div className="pane grow yard-main">
          {view === 'counts' ? <CountsList /> : null}
          {view === 'look-alikes' ? <LookAlikesView /> : null}
          {view === 'classes' ? <ClassesView /> : null}
        </div>
        {isStarting ? <StartPane onClose={() => change({ start: null })} /> : null}
      </div>
      <CautionLine about="A plan runs on what was counted; a count is booked as explained movements." />
    </div>
  );
}
