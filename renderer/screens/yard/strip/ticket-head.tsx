// The head of a ticket: its name, pour and state, how far it is counted, its sheet, dropping it.
import { type ReactNode, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useCommand } from '../../../client/core.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import { paperSheetAddress } from '../../../parts/paper-sheets.ts';
import type { Ticket } from './asked.ts';
import { stateWords } from './strip-words.ts';

export function TicketHead(props: { readonly ticket: Ticket }): ReactNode {
  const { ticket, parts } = props.ticket;
  const words = useTimeWords();
  const lines = parts.flatMap((part) => part.expected);
  const counted = lines.filter((line) => line.isCounted).length;
  return (
    <header className="screen-head">
      <h1>
        <Link href="/yard/strip" className="strip-back">
          Strip tickets
        </Link>{' '}
        {ticket.name}
      </h1>
      <span className="soft">
        <b>{stateWords[ticket.state]}</b> · pour {ticket.pour}
        {ticket.follows === null ? ` · planned ${words.full(ticket.plannedAt)} (forecast)` : ''} · {counted}{' '}
        of {lines.length} lines counted
        {ticket.follows === null ? null : (
          <>
            {' '}
            · late finds of{' '}
            <Link href={`/yard/strip/${encodeURIComponent(ticket.follows.id)}`}>{ticket.follows.name}</Link>
          </>
        )}
      </span>
      <span className="head-end strip-head-end">
        <Link href={paperSheetAddress('strip', ticket.id)}>Strip ticket on paper</Link>
        {ticket.state === 'open' ? <Drop id={ticket.id} name={ticket.name} /> : null}
      </span>
    </header>
  );
}

/** Asked once more, since a dropped ticket is not taken up again. */
function Drop(props: { readonly id: string; readonly name: string }): ReactNode {
  const drop = useCommand('ticket.drop');
  const [, navigate] = useLocation();
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <button type="button" className="quiet" onClick={() => setAsked(true)}>
        Drop it
      </button>
    );
  return (
    <>
      <button
        type="button"
        onClick={() => drop.mutate({ ticket: props.id }, { onSuccess: () => navigate('/yard/strip') })}
      >
        Drop {props.name}: nothing is booked
      </button>
      <button type="button" className="quiet" onClick={() => setAsked(false)}>
        Keep it
      </button>
      {drop.error === null ? null : <RefusalNote error={drop.error} />}
    </>
  );
}
