// The yard: what is where, whose and in what condition, at any date; the ledger behind it; and the slip by
// which movements are booked. What is open stands in the address.
import { type ReactNode, useRef } from 'react';
import { conditions } from '../../../core/yard/movement.ts';
import { useAddressQuery } from '../../client/query.ts';
import { Choice } from '../../parts/choice.tsx';
import { BookingPane } from './booking-pane.tsx';
import { HistoryPane } from './history-pane.tsx';
import { LedgerView, noFilters } from './ledger-view.tsx';
import { MovementsPane } from './movements-pane.tsx';
import { nothingChosen, QuantitiesView } from './quantities-view.tsx';
import { YardTabs } from './yard-tabs.tsx';
import './yard.css';

const views = [
  ['quantities', 'Quantities'],
  ['movements', 'Movements'],
] as const;

export function YardScreen(): ReactNode {
  const [query, change] = useAddressQuery();
  const view = query.get('show') === 'movements' ? 'movements' : 'quantities';
  const component = query.get('component');
  const location = query.get('location');
  const condition = conditions.find((each) => each === query.get('condition')) ?? null;
  const booking = query.get('slip') !== null;
  const body = useRef<HTMLDivElement>(null);
  const close = (): void => {
    // Back to the row that was opened, before it loses its mark.
    body.current?.querySelector<HTMLElement>('.yard-main tr.selected')?.focus();
    change({ ...nothingChosen, slip: null });
  };
  return (
    <div className="screen yard">
      <header className="screen-head">
        <h1>Yard</h1>
        <YardTabs />
        <Choice
          label="What of the yard"
          value={view}
          options={views}
          onChange={(next) =>
            change(
              { show: next === 'movements' ? next : null, ...nothingChosen, ...noFilters },
              { step: true },
            )
          }
        />
        <button
          type="button"
          className="primary head-end"
          aria-expanded={booking}
          onClick={() => change({ slip: booking ? null : 'open' })}
        >
          Book a movement
        </button>
      </header>
      <div className="screen-body" ref={body}>
        <div className="pane grow yard-main">
          {view === 'movements' ? <LedgerView /> : <QuantitiesView />}
        </div>
        {booking ? <BookingPane component={component} location={location} onClose={close} /> : null}
        {!booking && view === 'quantities' && component !== null ? (
          <HistoryPane
            key={`${component} ${query.get('owner')} ${location}`}
            of={{ component, owner: query.get('owner'), location, condition }}
            onCondition={(next) => change({ condition: next })}
            onClose={close}
          />
        ) : null}
        {!booking && view === 'quantities' && component === null && location !== null ? (
          <MovementsPane key={location} location={location} onClose={close} />
        ) : null}
      </div>
    </div>
  );
}
