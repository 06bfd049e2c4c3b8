// A booked ticket: when and by whom, what is still missing, and the way to a ticket for what turns up late.
import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import type { Ticket } from './asked.ts';

export function BookedPart(props: { readonly ticket: Ticket }): ReactNode {
  const { ticket, booked, stillMissing, late } = props.ticket;
  const words = useTimeWords();
  const make = useCommand('ticket.late');
  const now = useNow(booked?.at ?? ticket.plannedAt);
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
                  { ticket: ticket.id, at: now() },
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

/** This moment, if the plan covers today; the demo's weeks are not today's, and there it is when it was booked. */
function useNow(booked: string): () => string {
  const board = useCore('board.read', { job: useJob().code });
  const words = useTimeWords();
  const days = board.data?.days ?? [];
  const [first, last] = [days[0]?.date, days.at(-1)?.date];
  return () => {
    const now = new Date().toISOString();
    const date = words.date(now);
    const isCovered = first !== undefined && last !== undefined && date >= first && date <= last;
    return isCovered ? now : booked;
  };
}
