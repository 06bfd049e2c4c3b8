// Counting on phones: opening a door for them on an address that is chosen here, the code to sign in, who is there, and
// closing it again.
import type { ReactNode } from 'react';
import { useHostQuery } from '../../../client/core.tsx';
import { CautionLine, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { YardTabs } from '../yard-tabs.tsx';
import { OpenForm } from './open-form.tsx';
import { OpenedDoor } from './opened-door.tsx';
import '../yard.css';
import './phone.css';

const everyMs = 1000;

export function PhoneScreen(): ReactNode {
  const state = useHostQuery('phone.state', {}, everyMs);
  return (
    <div className="screen yard">
      <header className="screen-head">
        <h1>Yard</h1>
        <YardTabs />
      </header>
      <div className="screen-body">
        <div className="pane grow phone-pane">
          {state.error === null ? null : <RefusalNote error={state.error} />}
          {state.data === undefined ? (
            state.error === null && <Waiting what="Looking at the networks of this machine …" />
          ) : state.data.door === null ? (
            <OpenForm state={state.data} />
          ) : (
            <OpenedDoor door={state.data.door} />
          )}
        </div>
      </div>
      <CautionLine about="What is counted on a phone is entered, and booked only here." />
    </div>
  );
}
