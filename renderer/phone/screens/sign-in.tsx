// Signing in: the code that stands on the screen where the app is open, and the name of who counts.
import { type FormEvent, type ReactNode, useState } from 'react';
import { addresses } from '../address.ts';
import { unsentLines, unsentWords } from '../counting/pending.ts';
import { keepName } from '../kept/entries.ts';
import type { KeptRefusal } from '../kept/kept.ts';
import { useKept } from '../kept/state.ts';
import { setConnection } from '../sending/connection.ts';
import { callDoor } from '../sending/door.ts';
import { readWork, sendAll } from '../sending/sender.ts';
import { Head } from './head.tsx';
import { OfflineWords } from './offline-words.tsx';
import { Refusal } from './refusal.tsx';

const notReached: KeptRefusal = {
  code: 'unreachable',
  message: 'There is no connection to the app.',
  hint: 'Maybe the phone is on another network, or the door for phones was closed.',
};

export function SignIn(props: { readonly code: string }): ReactNode {
  const kept = useKept();
  const [code, setCode] = useState(props.code);
  const [name, setName] = useState(kept.name ?? '');
  const [refusal, setRefusal] = useState<KeptRefusal | null>(null);
  const [isBusy, setBusy] = useState(false);
  const unsent = unsentLines(kept.batches, kept.drafts);

  const signIn = async (): Promise<void> => {
    setBusy(true);
    setRefusal(null);
    const outcome = await callDoor('phone.sign-in', { code, name });
    if (outcome.came === 'answered') {
      await keepName(name.trim());
      setConnection('there');
      await readWork();
      location.hash = addresses.work;
      void sendAll(true);
      return;
    }
    setBusy(false);
    setRefusal(outcome.came === 'refused' ? outcome.refusal : notReached);
  };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    void signIn();
  };

  return (
    <main className="phone-screen">
      <Head title="Count on this phone" />
      {unsent === 0 ? null : (
        <p className="notice">
          <strong>{unsentWords(unsent)}.</strong> They stay on this phone and are sent after you signed in.
        </p>
      )}
      <form onSubmit={submit}>
        <label>
          Code
          <input
            inputMode="numeric"
            autoComplete="one-time-code"
            maxLength={12}
            value={code}
            onChange={(event) => setCode(event.target.value)}
            aria-describedby="code-where"
            required
          />
        </label>
        <p id="code-where" className="soft">
          Eight digits. They stand where the app is open, under Yard, Count on a phone.
        </p>
        <label>
          Your name
          <input
            autoComplete="name"
            maxLength={20}
            value={name}
            onChange={(event) => setName(event.target.value)}
            required
          />
        </label>
        <p className="soft">It stands beside everything you enter.</p>
        {refusal === null ? null : <Refusal refusal={refusal} isNew />}
        <button type="submit" className="primary wide" disabled={isBusy}>
          {isBusy ? 'Signing in …' : 'Sign in'}
        </button>
      </form>
      <OfflineWords />
      {kept.work === null && kept.papers.length === 0 ? null : (
        <a className="big-link" href={addresses.work}>
          Go on counting without signing in
        </a>
      )}
    </main>
  );
}
