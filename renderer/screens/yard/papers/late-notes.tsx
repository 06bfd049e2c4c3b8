// Notes whose day has passed: no plan counts on them until each has a new day, which is typed right here.
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useJobClock, useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import { readWhen } from '../../../parts/when-text.ts';
import { FieldError } from '../field.tsx';
import { noteAddress, noteKindWords, type NoteRow } from './note-words.ts';

export function LateNotes(props: { readonly rows: readonly NoteRow[] }): ReactNode {
  const { rows } = props;
  return (
    <section className="late-notes" aria-label="Late">
      <h2 className="short-word">
        {rows.length} late: {rows.length === 1 ? 'it counts' : 'they count'} in no plan without a new day
      </h2>
      <ul>
        {rows.map((row) => (
          <LateNote key={row.id} row={row} />
        ))}
      </ul>
    </section>
  );
}

function LateNote(props: { readonly row: NoteRow }): ReactNode {
  const { row } = props;
  const words = useTimeWords();
  const clock = useJobClock();
  const read = useCore('note.read', { note: row.id });
  const save = useCommand('note.save');
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<{ readonly message: string; readonly hint?: string | undefined } | null>(
    null,
  );
  const set = (): void => {
    if (clock === null || read.data === undefined || save.isPending) return;
    const day = readWhen(text, row.expectedAt ?? clock.planFrom, clock.timeZone);
    setWrong(day.ok ? null : day.error);
    if (!day.ok) return;
    const { state: _, countedThere: __, ...note } = read.data.note;
    save.mutate({ note: { ...note, expectedAt: day.value } }, { onSuccess: () => setText('') });
  };
  return (
    <li>
      <Link href={noteAddress(row.id)}>
        {noteKindWords[row.kind]} {row.number}
      </Link>{' '}
      {row.from} → {row.to}, {row.sent} pieces, was due{' '}
      <b>{row.expectedAt === null ? '' : words.full(row.expectedAt)}</b>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          set();
        }}
      >
        <input
          aria-label={`New day of ${row.number}`}
          placeholder="new day, as 16 Mar 07:00"
          aria-invalid={wrong !== null}
          value={text}
          onChange={(event) => {
            setWrong(null);
            setText(event.target.value);
          }}
        />
        <button type="submit" disabled={text.trim() === ''}>
          Set
        </button>
      </form>
      {wrong === null ? null : (
        <FieldError
          error={{
            line: null,
            field: 'expectedAt',
            message: wrong.message,
            ...(wrong.hint === undefined ? {} : { hint: wrong.hint }),
          }}
        />
      )}
      {save.error === null ? null : <RefusalNote error={save.error} />}
    </li>
  );
}
