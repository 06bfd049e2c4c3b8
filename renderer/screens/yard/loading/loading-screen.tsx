// Pick lists, loads and trucks: what is fetched from which rack, how it stands on which truck, and what each truck
// carries. What is open stands in the address.
import type { ReactNode } from 'react';
import { useParams } from 'wouter';
import { go } from '../../../client/address.ts';
import { useAddressQuery } from '../../../client/query.ts';
import { Choice } from '../../../parts/choice.tsx';
import { CautionLine } from '../../../parts/notes.tsx';
import { YardTabs } from '../yard-tabs.tsx';
import { LoadView } from './load-view.tsx';
import { LoadsView } from './loads-view.tsx';
import { MakeLoads } from './make-loads.tsx';
import { PickView } from './pick-view.tsx';
import { TrucksView } from './trucks-view.tsx';
import '../yard.css';
import '../gangs/gangs.css';
import './loading.css';

const views = [
  ['pick', 'Pick lists'],
  ['loads', 'Loads'],
  ['trucks', 'Trucks'],
] as const;

export function LoadingScreen(): ReactNode {
  const { load } = useParams<{ load?: string }>();
  const [query, change] = useAddressQuery();
  const asked = load === undefined ? query.get('show') : 'loads';
  const view = views.find(([each]) => each === asked)?.[0] ?? (asked === 'make' ? 'loads' : 'pick');
  const adding = query.get('add') !== null;
  return (
    <div className="screen yard loading">
      <header className="screen-head">
        <h1>Yard</h1>
        <YardTabs />
        <Choice
          label="Pick lists, loads or trucks"
          value={view}
          options={views}
          onChange={(next) => go(next === 'pick' ? '/yard/loading' : `/yard/loading?show=${next}`)}
        />
        {view === 'loads' && asked !== 'make' ? (
          <button type="button" className="primary head-end" onClick={() => go('/yard/loading?show=make')}>
            Make loads
          </button>
        ) : null}
        {view === 'trucks' ? (
          <button
            type="button"
            className="primary head-end"
            aria-expanded={adding}
            onClick={() => change({ add: adding ? null : 'open', truck: null })}
          >
            Enter a truck
          </button>
        ) : null}
      </header>
      <div className="screen-body">
        {view === 'pick' ? <PickView /> : null}
        {view === 'trucks' ? <TrucksView /> : null}
        {asked === 'make' ? <MakeLoads /> : null}
        {asked === 'loads' && load === undefined ? <LoadsView /> : null}
        {load === undefined ? null : <LoadView key={load} load={decodeURIComponent(load)} />}
      </div>
      <CautionLine about="Weights come from entered piece weights; the weight on the axles is not computed. The load is secured by the rules that bind the driver, and nobody stands between a load and a crane." />
    </div>
  );
}
