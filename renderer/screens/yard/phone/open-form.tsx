// Choosing the address on which phones may come in, with what has to be thought of before.
import { type FormEvent, type ReactNode, useState } from 'react';
import { useHostCall } from '../../../client/core.tsx';
import { useJob } from '../../../parts/job.tsx';
import { RefusalNote } from '../../../parts/notes.tsx';
import { type PhoneState, reachWords } from './phone-words.ts';

export function OpenForm({ state }: { readonly state: PhoneState }): ReactNode {
  const job = useJob();
  const open = useHostCall('phone.open');
  const { addresses, usualPort } = state;
  const [chosen, setChosen] = useState<string | null>(null);
  const [port, setPort] = useState(String(usualPort));
  const address = addresses.find((each) => each.address === chosen)?.address ?? addresses[0]?.address;
  const isPort = /^\d{4,5}$/u.test(port) && Number(port) >= 1024 && Number(port) <= 65_535;
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (address !== undefined && isPort) open.mutate({ address, job: job.code, port: Number(port) });
  };
  return (
    <form className="phone-open" onSubmit={submit}>
      <h2>Count on a phone</h2>
      <p>
        A phone on the same network opens a small page from this machine and counts the open strip tickets of
        job {job.code} and the open counts. It sees and does nothing else. What is counted stays on the phone
        until it is sent.
      </p>
      <fieldset>
        <legend>On which address</legend>
        {addresses.map(({ address: each, name, reach }) => (
          <label key={each} className="phone-address">
            <input
              type="radio"
              name="address"
              value={each}
              checked={each === address}
              onChange={() => setChosen(each)}
            />
            <strong>{each}</strong>
            <span>
              {name}: {reachWords(reach)}
            </span>
          </label>
        ))}
        {addresses.length === 0 ? (
          <p>This machine is on no network. Maybe connect it to the one that the phones are on.</p>
        ) : null}
      </fieldset>
      <label className="phone-port">
        Port
        <input
          inputMode="numeric"
          value={port}
          onChange={(event) => setPort(event.target.value)}
          aria-invalid={!isPort}
          aria-describedby="phone-port-why"
        />
        <span id="phone-port-why" className="soft">
          {isPort
            ? 'Leave it as it is: what a phone has not sent yet belongs to this address with this port.'
            : 'A number from 1024 to 65535 is wanted.'}
        </span>
      </label>
      <ul className="phone-cautions">
        <li>
          <strong>Only on the site&rsquo;s own network.</strong> The page comes by plain HTTP, which is not
          encrypted: whoever can listen on the network can read what is sent, and pass for a phone that is
          signed in.
        </li>
        <li>
          <strong>Only as long as needed.</strong> It closes with the book and the app; close it yourself when
          the counting is done.
        </li>
        <li>
          <strong>On the same address every time.</strong> Lines that a phone still holds are found again only
          there.
        </li>
      </ul>
      {open.error === null ? null : <RefusalNote error={open.error} />}
      <button type="submit" className="primary" disabled={open.isPending || address === undefined || !isPort}>
        Open for phones
      </button>
    </form>
  );
}
