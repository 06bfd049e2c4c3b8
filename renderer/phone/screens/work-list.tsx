// What can be counted: the open strip tickets of the job, each with where its gangs go, and the open counts.
import { type ReactNode, useState } from 'react';
import { addresses } from '../address.ts';
import { paperOfTicket } from '../counting/other-tickets.ts';
import { linesOnPaper, linesWords, unsentLines } from '../counting/pending.ts';
import type { CountRow, Paper, TicketRow } from '../kept/kept.ts';
import { useKept } from '../kept/state.ts';
import { askWork } from '../sending/sender.ts';
import { useEvery } from '../sending/use-every.ts';
import { Head } from './head.tsx';
import { OfflineWords } from './offline-words.tsx';

const everyMs = 20_000;

export function WorkList(): ReactNode {
  const { work, name } = useKept();
  useEvery(askWork, everyMs);
  return (
    <main className="phone-screen">
      <Head title={work === null ? 'To count' : `To count, job ${work.job}`} />
      <KeptApart />
      <h2>Strip tickets</h2>
      {work === null || work.tickets.length === 0 ? (
        <p className="soft">No ticket is open. They are made where the app is open, under Yard, Strip.</p>
      ) : (
        <ul className="big-list">
          {work.tickets.map((ticket) => (
            <li key={ticket.id}>
              <TicketLink ticket={ticket} />
            </li>
          ))}
        </ul>
      )}
      <h2>Counts</h2>
      {work === null || work.counts.length === 0 ? (
        <p className="soft">No count is open. They are started where the app is open, under Yard, Counts.</p>
      ) : (
        <ul className="big-list">
          {work.counts.map((count) => (
            <li key={count.id}>
              <CountLinks count={count} />
            </li>
          ))}
        </ul>
      )}
      <p className="soft">{name === null ? '' : `Counting as ${name}. `}</p>
      <OfflineWords />
    </main>
  );
}

/** What was refused and what waits for a ticket of late finds are easily forgotten in a pocket. */
function KeptApart(): ReactNode {
  const { batches } = useKept();
  const lines = linesOnPaper(batches.filter(({ state }) => state === 'refused' || state === 'late'));
  return lines === 0 ? null : (
    <a className="big-item" href={addresses.unsent}>
      <span className="item-name">Refused, and late finds</span>
      <span className="soft">{linesWords(lines)} kept on this phone</span>
    </a>
  );
}

function TicketLink({ ticket }: { readonly ticket: TicketRow }): ReactNode {
  const paper = paperOfTicket(ticket);
  return (
    <a className="big-item" href={addresses.paper(paper.key)}>
      <span className="item-name">
        {ticket.name}, pour {ticket.pour}
      </span>
      <span className="soft">
        {ticket.follows === null ? '' : `Late finds of ${ticket.follows.name}. `}
        {ticket.linesCounted} of {ticket.lines} lines counted
        <UnsentOf paper={paper.key} />
      </span>
      <span>{ticket.parts.map(({ nextWords }) => nextWords).join(' · ')}</span>
    </a>
  );
}

function CountLinks({ count }: { readonly count: CountRow }): ReactNode {
  const [open, setOpen] = useState(false);
  const link = (counter: 1 | 2): ReactNode => (
    <a className="big-item" href={addresses.paper(`count ${count.id} ${counter}`)}>
      <span className="item-name">
        {count.name}
        {count.counters === 2 ? `, counter ${counter}` : ''}: {count.places.join(', ')}
      </span>
      <span className="soft">
        {count.kind === 'spot' ? 'Spot check' : 'Whole places'}, {count.lines} lines
        <UnsentOf paper={`count ${count.id} ${counter}`} />
      </span>
    </a>
  );
  if (count.counters === 1) return link(1);
  return (
    <>
      <button
        type="button"
        className="big-item"
        aria-expanded={open}
        onClick={() => setOpen((before) => !before)}
      >
        <span className="item-name">
          {count.name}: {count.places.join(', ')}
        </span>
        <span className="soft">Two people count it: choose which one you are</span>
      </button>
      {open ? (
        <>
          {link(1)}
          {link(2)}
        </>
      ) : null}
    </>
  );
}

function UnsentOf(props: { readonly paper: string }): ReactNode {
  const { batches, drafts } = useKept();
  const own = ({ paper }: { readonly paper: Paper }): boolean => paper.key === props.paper;
  const lines = unsentLines(batches.filter(own), drafts.filter(own));
  return lines === 0 ? null : <strong>, {lines} not yet sent</strong>;
}
