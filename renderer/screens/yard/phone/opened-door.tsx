// The open phone door: its address to photograph or type, the one-time code, and the phones that are signed in.
import type { ReactNode } from 'react';
import { qrMark } from '../../../../core/sheets/qr-mark.ts';
import { useHostCall } from '../../../client/core.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import { sheetElement } from '../../sheets/sheet-elements.ts';
import { codeWords, type OpenPhoneDoor, spokenDigits } from './phone-words.ts';

const markMm = 58;

export function OpenedDoor({ door }: { readonly door: OpenPhoneDoor }): ReactNode {
  const renew = useHostCall('phone.code');
  const close = useHostCall('phone.close');
  const { url, code, job } = door;
  const error = renew.error ?? close.error;
  // With the code in it while there is one, so that it need not be typed in gloves.
  const address = code.state === 'open' ? `${url}#/code/${code.digits}` : url;
  return (
    <>
      <div className="phone-opened-head">
        <h2>Phones can count job {job}</h2>
        <button type="button" className="primary" disabled={close.isPending} onClick={() => close.mutate({})}>
          Close for phones
        </button>
      </div>
      {error === null ? null : <RefusalNote error={error} />}
      <div className="phone-opened">
        <section aria-labelledby="phone-where">
          <h3 id="phone-where">1. On the phone, open</h3>
          <p className="phone-url">{url}</p>
          <div className="phone-mark">{sheetElement(qrMark(address, markMm))}</div>
        </section>
        <section aria-labelledby="phone-code">
          <h3 id="phone-code">2. Enter the code and a name</h3>
          {code.state === 'open' ? (
            <p className="phone-digits">
              <output aria-label="The code">{spokenDigits(code.digits)}</output>
            </p>
          ) : null}
          <p className={code.state === 'closed' ? 'short-word' : 'soft'}>{codeWords(code)}</p>
          <button type="button" disabled={renew.isPending} onClick={() => renew.mutate({})}>
            {code.state === 'open' ? 'Another code' : 'Code for the next phone'}
          </button>
          <p className="soft">
            {code.state === 'open' ? 'The picture holds the code too, so that nobody has to type it. ' : ''}
            Plain HTTP, on the site&rsquo;s own network only; close it when the counting is done.
          </p>
        </section>
        <Phones door={door} />
      </div>
    </>
  );
}

function Phones({ door }: { readonly door: OpenPhoneDoor }): ReactNode {
  const words = useTimeWords();
  const end = useHostCall('phone.end');
  return (
    <section aria-labelledby="phone-who">
      <h3 id="phone-who">Phones signed in</h3>
      {end.error === null ? null : <RefusalNote error={end.error} />}
      {door.sessions.length === 0 ? <p className="soft">None yet.</p> : null}
      <ul className="phone-list">
        {door.sessions.map(({ id, name, since, lastSeen, entries, lines }) => (
          <li key={id}>
            <span>
              <strong>{name}</strong>, since {words.dayTime(since)}, last seen {words.time(lastSeen)}:{' '}
              {entries === 0
                ? 'nothing sent yet'
                : `${lines} ${lines === 1 ? 'line' : 'lines'} in ${entries} ${entries === 1 ? 'entry' : 'entries'}`}
            </span>
            <button type="button" aria-label={`Sign out ${name}`} onClick={() => end.mutate({ session: id })}>
              Sign out
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
