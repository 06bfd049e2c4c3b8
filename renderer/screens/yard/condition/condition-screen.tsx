// The condition of pieces: what is to clean and due back, what is to repair, what is set apart, and how much gets lost
// and damaged by turn, with the spares that follow.
import { type ReactNode, useRef } from 'react';
import { useAddressQuery } from '../../../client/query.ts';
import { Choice } from '../../../parts/choice.tsx';
import { CautionLine } from '../../../parts/notes.tsx';
import { YardTabs } from '../yard-tabs.tsx';
import { CleaningView } from './cleaning-view.tsx';
import { QuarantineView } from './quarantine-view.tsx';
import { RatesView } from './rates-view.tsx';
import { RepairsView } from './repairs-view.tsx';
import '../yard.css';
import '../gangs/gangs.css';
import './condition.css';

const views = [
  ['cleaning', 'Cleaning'],
  ['repairs', 'Repairs'],
  ['quarantine', 'Quarantine'],
  ['rates', 'Rates and spares'],
] as const;
type View = (typeof views)[number][0];

const adds: Readonly<Record<View, string | null>> = {
  cleaning: null,
  repairs: 'Enter a repair',
  quarantine: 'Set pieces apart',
  rates: null,
};

export function ConditionScreen(): ReactNode {
  const [query, change] = useAddressQuery();
  const view = views.find(([each]) => each === query.get('show'))?.[0] ?? 'cleaning';
  const adding = query.get('add') !== null;
  const body = useRef<HTMLDivElement>(null);
  const close = (): void => {
    // Back to the row that was opened, before it loses its mark.
    body.current?.querySelector<HTMLElement>('.yard-main tr.selected')?.focus();
    change({ line: null, add: null });
  };
  const words = adds[view];
  return (
    <div className="screen yard">
      <header className="screen-head">
        <h1>Yard</h1>
        <YardTabs />
        <Choice
          label="What of the condition"
          value={view}
          options={views}
          onChange={(next) =>
            change({ show: next === 'cleaning' ? null : next, line: null, add: null }, { step: true })
          }
        />
        {words === null ? null : (
          <button
            type="button"
            className="primary head-end"
            aria-expanded={adding}
            onClick={() => change({ add: adding ? null : 'open', line: null })}
          >
            {words}
          </button>
        )}
      </header>
      <div className="screen-body" ref={body}>
        {view === 'cleaning' ? <CleaningView onClose={close} /> : null}
        {view === 'repairs' ? <RepairsView adding={adding} onClose={close} /> : null}
        {view === 'quarantine' ? <QuarantineView adding={adding} onClose={close} /> : null}
        {view === 'rates' ? <RatesView /> : null}
      </div>
      <CautionLine about="Only what is clean, sound and counted feeds a plan. A figure marked default has no source: the own record takes its place." />
    </div>
  );
}
