// What booking a draft would move, said beforehand, and the buttons that save it, book it or drop it.
import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import { useCommand } from '../../../client/core.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { NoteRefusal } from './note-refusal.tsx';
import { claimWords } from './note-words.ts';
import type { NoteDesk } from './use-note.ts';
import { willMoveWords } from './will-move.ts';

export function BookNote(props: { readonly desk: NoteDesk; readonly isNew: boolean }): ReactNode {
  const { desk, isNew } = props;
  const { moving, errors } = desk;
  const words = useTimeWords();
  return (
    <section className="book-note" aria-label="Booking">
      <h2>Booking</h2>
      {moving.can ? (
        <>
          <p>{willMoveWords(moving, words.full)}</p>
          {moving.claims.length === 0 ? null : (
            <ul className="claims">
              {moving.claims.map((claim) => (
                <li key={`${claim.component} ${claim.owner} ${claim.theirs}`}>
                  <b>
                    {claim.component} ({claim.owner})
                  </b>{' '}
                  {claimWords(claim)}. It stays open as a claim.
                </li>
              ))}
            </ul>
          )}
        </>
      ) : (
        <p className="soft">
          {moving.why} {moving.hint}
        </p>
      )}
      {desk.overtaken === null ? null : (
        <div className="note note-caution" role="alert">
          <span className="note-word">Changed meanwhile</span>
          <span>
            The book has version {desk.overtaken}, you began from version {desk.draft.version}.{' '}
            <button type="button" onClick={desk.takeBook}>
              Take what the book has
            </button>{' '}
            <button type="button" onClick={desk.keepMine}>
              Go on with mine
            </button>
          </span>
        </div>
      )}
      <NoteRefusal error={desk.error} />
      <div className="slip-end">
        <button type="button" className="primary" aria-disabled={desk.busy} onClick={() => void desk.book()}>
          Book it
        </button>
        <button type="button" aria-disabled={desk.busy} onClick={() => void desk.save()}>
          Save draft
        </button>
        <output>
          {desk.done ??
            (errors.length > 0 ? 'Not saved: see the fields marked.' : desk.touched ? 'Not saved yet.' : '')}
        </output>
      </div>
      {isNew ? null : <Drop note={desk.draft.id} number={desk.draft.number} />}
    </section>
  );
}

/** Asked once more, since a dropped draft is not taken up again. */
function Drop(props: { readonly note: string; readonly number: string }): ReactNode {
  const drop = useCommand('note.drop');
  const [, navigate] = useLocation();
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <button type="button" className="quiet" onClick={() => setAsked(true)}>
        Drop the draft
      </button>
    );
  return (
    <p>
      <button
        type="button"
        onClick={() => drop.mutate({ note: props.note }, { onSuccess: () => navigate('/yard/papers') })}
      >
        Drop {props.number}: nothing is booked
      </button>
      <button type="button" className="quiet" onClick={() => setAsked(false)}>
        Keep it
      </button>
      <NoteRefusal error={drop.error} />
    </p>
  );
}
