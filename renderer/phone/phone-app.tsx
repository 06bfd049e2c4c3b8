// The screens of the page by its address, with what is not yet sent always at the foot.
import type { ReactNode } from 'react';
import { useAddress } from './address.ts';
import { useKept } from './kept/state.ts';
import { CountPaper } from './screens/count-paper.tsx';
import { SendingBar } from './screens/sending-bar.tsx';
import { SignIn } from './screens/sign-in.tsx';
import { Unsent } from './screens/unsent.tsx';
import { WorkList } from './screens/work-list.tsx';
import { useConnection } from './sending/connection.ts';

export function PhoneApp(): ReactNode {
  const address = useAddress();
  const kept = useKept();
  const connection = useConnection();
  const [place, key] = address;
  // Before the first sign-in there is nothing else to show. A code in the address came by a picture of it.
  const isNew = kept.work === null && kept.papers.length === 0 && connection !== 'there';
  const code = place === 'code' ? (key ?? '') : '';
  if (isNew || place === 'sign-in' || place === 'code') return <SignIn key={code} code={code} />;
  return (
    <>
      {place === 'paper' && key !== undefined ? (
        <CountPaper key={key} paperKey={key} />
      ) : place === 'unsent' ? (
        <Unsent />
      ) : (
        <WorkList />
      )}
      <SendingBar />
    </>
  );
}
