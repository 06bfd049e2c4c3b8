// One strip ticket: at the left its parts to be counted, at the right who cleared it, who counted, what booking moves.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useCore } from '../../../client/core.tsx';
import { CautionLine, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { Attachments } from '../papers/attachments.tsx';
import type { Ticket } from './asked.ts';
import { BookedPart } from './booked-part.tsx';
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
