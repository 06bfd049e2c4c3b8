// What the plan strips next and is on no ticket, with where each gang goes; and a ticket of any other pour.
import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import { useCommand, useCore } from '../../../client/core.tsx';
import type { Refused } from '../../../client/refused.ts';
import { useJob } from '../../../parts/job.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { SelectField } from '../gangs/form-parts.tsx';
import type { NextStrip } from './asked.ts';

export function NextStrips(): ReactNode {
  const job = useJob();
  const next = useCore('ticket.next', { job: job.code });
  const pours = useCore('pour.list', { job: job.code });
  const make = useCommand('ticket.make');
  const [, navigate] = useLocation();
  const [pour, setPour] = useState('');
  const makeOf = (of: string, loose: boolean): void => {
    if (make.isPending) return;
    make.mutate(
      { job: job.code, pour: of, loose },
      { onSuccess: (made) => navigate(`/yard/strip/${encodeURIComponent(made.ticket)}`) },
    );
  };
  return (
    <>
      <div className="side-head">
        <h2>Next by the plan, on no ticket yet</h2>
      </div>
      {next.error === null ? null : <RefusalNote error={next.error} />}
      {next.data === undefined ? (
        <Waiting what="Reading the plan …" />
      ) : next.data.strips.length === 0 ? (
        <p className="soft strip-side-part">Every strip of the plan is on a ticket.</p>
      ) : (
        <ul className="next-strips">
          {next.data.strips.map((strip) => (
            <li key={strip.pour}>
              <Strip strip={strip} onMake={() => makeOf(strip.pour, strip.loose > 0)} />
            </li>
          ))}
        </ul>
      )}
      <form
        className="strip-side-part strip-other"
        onSubmit={(event) => {
          event.preventDefault();
          if (pour !== '') makeOf(pour, isLooseFree(next.data?.strips, pour));
        }}
      >
        <SelectField
          label="Of another pour"
          value={pour}
          none="choose …"
          options={(pours.data?.pours ?? []).map(
            (each) => [each.pour.code, `${each.pour.code} · ${each.pour.name}`] as const,
          )}
          onChange={(chosen) => {
            make.reset();
            setPour(chosen);
          }}
        />
        <button type="submit" aria-disabled={pour === ''}>
          Make its ticket
        </button>
      </form>
      <Refusal error={make.error} />
    </>
  );
}

/** A pour that is not among the next ones has its loose pieces still to come, unless the core says otherwise. */
function isLooseFree(strips: readonly NextStrip[] | undefined, pour: string): boolean {
  const strip = strips?.find((each) => each.pour === pour);
  return strip === undefined || strip.loose > 0;
}

function Refusal(props: { readonly error: Refused | null }): ReactNode {
  return props.error === null ? null : <RefusalNote error={props.error} />;
}

function Strip(props: { readonly strip: NextStrip; readonly onMake: () => void }): ReactNode {
  const { strip } = props;
  const words = useTimeWords();
  return (
    <>
      <div className="next-strip-head">
        <span>
          <b>{strip.pour}</b> {strip.name}
          <br />
          <span className="soft">
            {words.full(strip.stripFrom)} to {words.time(strip.stripTo)}, forecast
            {strip.isPast ? ' · past, and on no ticket' : ''}
          </span>
        </span>
        <button type="button" onClick={props.onMake} aria-label={`Make ticket of ${strip.pour}`}>
          Make ticket
        </button>
      </div>
      <ul className="next-strip-turns">
        {strip.turns.map((turn) => (
          <li key={turn.turn}>
            {turn.gang === null ? turn.design : `${turn.gang} (${turn.design})`} {turn.turn}: {turn.nextWords}
          </li>
        ))}
        {strip.loose === 0 ? null : <li>{strip.loose} loose pieces</li>}
      </ul>
    </>
  );
}
