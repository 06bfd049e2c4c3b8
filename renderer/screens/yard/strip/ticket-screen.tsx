// One strip ticket: at the left its parts to be counted, at the right who cleared it, who counted, what booking moves.
import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { CautionLine, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { Attachments } from '../papers/attachments.tsx';
import type { Ticket } from './asked.ts';
import { BookingPart } from './booking-part.tsx';
import { ClearancePart } from './clearance-form.tsx';
import { CountForm } from './count-form.tsx';
import { EntriesList } from './entries-list.tsx';
import { ExtraForm } from './extra-form.tsx';
import { TicketFacts } from './ticket-facts.tsx';
import { TicketHead } from './ticket-head.tsx';
import { useKeptCount } from './use-kept-count.ts';
import '../yard.css';
import '../papers/papers.css';
import './strip.css';

export const stripCaution =
  'A loosened gang is a falling wall: the crane is on and firm before the last ties, and nobody is below. A forecast is never a release; a named person clears each strip.';

export function TicketScreen(props: { readonly id: string }): ReactNode {
  const read = useCore('ticket.read', { ticket: props.id });
  if (read.error !== null)
    return (
      <div className="screen yard">
        <RefusalNote error={read.error} />
        <p className="strip-side-part">
          <Link href="/yard/strip">All strip tickets</Link>
        </p>
      </div>
    );
  if (read.data === undefined) return <Waiting what="Reading the strip ticket …" />;
  return <TicketView key={read.data.ticket.id} ticket={read.data} />;
}

function TicketView(props: { readonly ticket: Ticket }): ReactNode {
  const { ticket } = props;
  const kept = useKeptCount(ticket.ticket.id);
  const hasTyped = Object.values(kept.count.draft).some((cells) =>
    Object.values(cells).some((text) => text.trim() !== ''),
  );
  const isOpen = ticket.ticket.state === 'open';
  return (
    <div className="screen yard">
      <TicketHead ticket={ticket} />
      <div className="screen-body">
        <div className="pane grow strip-main">
          <CountForm ticket={ticket} kept={kept} />
        </div>
        <aside className="pane side yard-side strip-side" aria-label="Clearance and booking">
          {ticket.ticket.follows === null ? <ClearancePart ticket={ticket.ticket} /> : null}
          <TicketFacts ticket={ticket.ticket} />
          <EntriesList entries={ticket.entries} />
          {isOpen ? (
            <>
              <details className="strip-side-part">
                <summary>More than expected, or not on the list</summary>
                <ExtraForm ticket={ticket} />
              </details>
              <section className="strip-side-part" aria-label="Booking">
                <h2>Book it</h2>
                <BookingPart ticket={ticket} hasTyped={hasTyped} />
              </section>
            </>
          ) : (
            <BookedPart ticket={ticket} />
          )}
          <section className="strip-side-part">
            <Attachments paper={ticket.ticket.id} occasion="damage-at-strip" />
          </section>
        </aside>
      </div>
      <CautionLine about={stripCaution} />
    </div>
  );
}

/** What is missing of a booked ticket, and the way to a ticket for what turns up late. */
function BookedPart(props: { readonly ticket: Ticket }): ReactNode {
  const { ticket, booked, stillMissing, late } = props.ticket;
  const words = useTimeWords();
  const make = useCommand('ticket.late');
  const [, navigate] = useLocation();
  if (booked === null) return <p className="strip-side-part">This ticket was dropped: nothing was booked.</p>;
  const isLateOpen = late.some(({ state }) => state === 'open');
  return (
    <section className="strip-side-part" aria-label="Booked">
      <h2>Booked</h2>
      <p>
        {words.full(booked.at)} by {booked.who}. Its movements stand in the ledger with note {ticket.name}.
      </p>
      {ticket.follows === null ? (
        <>
          <h3>Still missing</h3>
          {stillMissing.length === 0 ? (
            <p className="soft">Nothing.</p>
          ) : (
            <ul className="strip-missing-list">
              {stillMissing.map((line) => (
                <li key={`${line.part} ${line.component}`}>
                  <b>
                    {line.quantity} {line.component}
                  </b>{' '}
                  of {line.part}
                </li>
              ))}
            </ul>
          )}
          {late.length === 0 ? null : (
            <p>
              Late finds:{' '}
              {late.map((each, index) => (
                <span key={each.id}>
                  {index === 0 ? '' : ', '}
                  <Link href={`/yard/strip/${encodeURIComponent(each.id)}`}>{each.name}</Link> ({each.state})
                </span>
              ))}
            </p>
          )}
          {stillMissing.length === 0 || isLateOpen ? null : (
            <button
              type="button"
              onClick={() => {
                if (make.isPending) return;
                make.mutate(
                  { ticket: ticket.id },
                  {
                    onSuccess: (made) => navigate(`/yard/strip/${encodeURIComponent(made.ticket)}`),
                  },
                );
              }}
            >
              Something turned up: ticket for late finds
            </button>
          )}
          {make.error === null ? null : <RefusalNote error={make.error} />}
        </>
      ) : null}
    </section>
  );
}
