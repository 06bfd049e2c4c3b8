// Booking a ticket: what will move, what is missing against whom, before anything is booked; and what nobody counted is
// asked about. All of it moves at once or nothing does.
import { type ReactNode, useState } from 'react';
import { answer } from '../../../../core/answer.ts';
import { type Output, useCommand, useCore } from '../../../client/core.tsx';
import type { Refused } from '../../../client/refused.ts';
import type { JobClock } from '../../../parts/job-clock.ts';
import { useJobClock, useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { errorFor, readMoment, TextField } from '../gangs/form-parts.tsx';
import type { Ticket } from './asked.ts';
import { BookingSummary } from './booking-summary.tsx';
import { restAsNone } from './count-draft.ts';

export function BookingPart(props: { readonly ticket: Ticket; readonly hasTyped: boolean }): ReactNode {
  const clock = useJobClock();
  const words = useTimeWords();
  if (clock === null) return <Waiting what="Reading the clock of the job …" />;
  return (
    <BookingForm
      ticket={props.ticket}
      hasTyped={props.hasTyped}
      clock={clock}
      planned={words.full(props.ticket.ticket.plannedAt)}
    />
  );
}

function BookingForm(given: {
  readonly ticket: Ticket;
  readonly hasTyped: boolean;
  readonly clock: JobClock;
  readonly planned: string;
}): ReactNode {
  const { clock, hasTyped } = given;
  const { ticket, parts } = given.ticket;
  // Null: as planned, to the second.
  const [text, setText] = useState<string | null>(null);
  const [asExpected, setAsExpected] = useState(false);
  const near = { ...clock, planFrom: ticket.plannedAt };
  const at = text === null ? answer(ticket.plannedAt) : readMoment(text, near);
  // "now" is another moment at each reading: the trial takes the planned one until it is booked.
  const isNow = ['', 'now'].includes(text?.trim().toLowerCase() ?? 'planned');
  const trialAt = at.ok && !isNow ? at.value : ticket.plannedAt;
  const trial = useCore('ticket.trial', { ticket: ticket.id, at: trialAt, uncountedAsExpected: asExpected });
  const book = useCommand('ticket.book');
  return (
    <form
      className="slip strip-book"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!at.ok || book.isPending || hasTyped) return;
        book.mutate({ ticket: ticket.id, at: at.value, uncountedAsExpected: asExpected });
      }}
    >
      <TextField
        label={ticket.follows === null ? 'Stripped at' : 'Turned up at'}
        value={text ?? given.planned}
        placeholder="now, or as 10 Mar 16:00"
        error={errorFor(at.ok ? {} : { at: at.error }, book.error, 'at')}
        onChange={(typed) => {
          book.reset();
          setText(typed);
        }}
      />
      <TrialAnswer
        ticket={ticket.id}
        trial={trial.data}
        error={trial.error}
        parts={parts}
        isLate={ticket.follows !== null}
        onAsExpected={() => setAsExpected(true)}
      />
      {asExpected ? (
        <label className="tick">
          <input type="checkbox" checked onChange={() => setAsExpected(false)} />
          what nobody counted came back as expected; what is broken down of it is to be cleaned
        </label>
      ) : null}
      {book.error === null || book.error.field === 'at' ? null : <RefusalNote error={book.error} />}
      <div className="slip-end">
        <button type="submit" className="primary" aria-disabled={book.isPending || hasTyped || !at.ok}>
          Book {ticket.name}
        </button>
        <output>{hasTyped ? 'Enter what is typed in the grid first.' : ''}</output>
      </div>
    </form>
  );
}

function TrialAnswer(props: {
  readonly ticket: string;
  readonly trial: Output<'ticket.trial'> | undefined;
  readonly error: Refused | null;
  readonly parts: Ticket['parts'];
  readonly isLate: boolean;
  readonly onAsExpected: () => void;
}): ReactNode {
  const { ticket, trial, error, parts, isLate } = props;
  const enter = useCommand('ticket.enter');
  const save = useCommand('ticket.save');
  if (error === null)
    return trial === undefined ? (
      <Waiting what="Reading what would move …" />
    ) : (
      <BookingSummary booking={trial} isLate={isLate} />
    );
  const rest = restAsNone(parts);
  return (
    <>
      {error.code === 'nothing-counted' ? (
        <p className="soft">{error.message}</p>
      ) : (
        <RefusalNote error={error} />
      )}
      {error.code === 'not-counted' ? (
        <div className="strip-answers">
          <button
            type="button"
            onClick={() => {
              if (!enter.isPending)
                enter.mutate({ ticket, id: crypto.randomUUID(), lines: rest, device: 'here' });
            }}
          >
            None of them came back: enter 0
          </button>
          <button type="button" onClick={props.onAsExpected}>
            They came back as expected
          </button>
        </div>
      ) : null}
      {error.code === 'make-up-changed' || error.code === 'not-enough' ? (
        <button
          type="button"
          onClick={() => {
            if (!save.isPending) save.mutate({ ticket, expectAnew: true });
          }}
        >
          Work out anew what is expected
        </button>
      ) : null}
      {enter.error === null ? null : <RefusalNote error={enter.error} />}
      {save.error === null ? null : <RefusalNote error={save.error} />}
    </>
  );
}
