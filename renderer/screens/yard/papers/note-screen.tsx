// One note at its address: a draft to write on, or what was booked. A new one has the address of its kind.
import { type ReactNode, useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import { useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { useTimeWords } from '../../../parts/job-time.ts';
import { CautionLine, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { paperSheetAddress } from '../../../parts/paper-sheets.ts';
import { BookedNote } from './booked-note.tsx';
import { NoteEditor } from './note-editor.tsx';
import {
  goesBack,
  isNoteKind,
  type Note,
  noteKindList,
  noteKindSense,
  noteKindWords,
  noteStateWords,
} from './note-words.ts';
import '../yard.css';
import './papers.css';

const caution = 'What was counted is what is booked; the paper’s figure stands beside it as a claim.';

export function NoteScreen(props: { readonly id: string }): ReactNode {
  return props.id === 'new' ? <NewNoteScreen /> : <KnownNote key={props.id} id={props.id} />;
}

function KnownNote(props: { readonly id: string }): ReactNode {
  const read = useCore('note.read', { note: props.id });
  if (read.error !== null)
    return (
      <div className="screen yard">
        <RefusalNote error={read.error} />
        <p className="papers-line">
          <Link href="/yard/papers">All papers</Link>
        </p>
      </div>
    );
  if (read.data === undefined || read.data.note.id !== props.id) return <Waiting what="Reading the note …" />;
  const { note } = read.data;
  return (
    <div className="screen yard">
      <Head note={note} />
      {note.state === 'draft' ? (
        <NoteEditor before={note} kind={note.kind} number={note.number} />
      ) : (
        <BookedNote read={read.data} />
      )}
      <CautionLine about={caution} />
    </div>
  );
}

function Head(props: { readonly note: Note }): ReactNode {
  const { note } = props;
  const words = useTimeWords();
  return (
    <header className="screen-head">
      <h1>
        <Link href="/yard/papers" className="papers-back">
          Papers
        </Link>{' '}
        {noteKindWords[note.kind]} {note.number}
      </h1>
      <span className="soft">
        <b>{noteStateWords[note.state]}</b>
        {note.expectedAt === null ? '' : ` · due ${words.full(note.expectedAt)}`} · {note.from} → {note.to} ·{' '}
        {noteKindSense[note.kind]}
      </span>
      <Link
        className="head-end"
        href={paperSheetAddress(goesBack(note.kind) ? 'return' : 'delivery', note.id)}
      >
        Print the note
      </Link>
    </header>
  );
}

function NewNoteScreen(): ReactNode {
  const [query, change] = useAddressQuery();
  const [, navigate] = useLocation();
  const list = useCore('note.list', {});
  const asked = query.get('kind') ?? '';
  const kind = isNoteKind(asked) ? asked : 'delivery';
  const number = useMemo(() => list.data?.nextNumbers[kind] ?? '', [list.data, kind]);
  return (
    <div className="screen yard">
      <header className="screen-head">
        <h1>
          <Link href="/yard/papers" className="papers-back">
            Papers
          </Link>{' '}
          New note
        </h1>
        <label className="papers-kind">
          Kind{' '}
          <select value={kind} onChange={(event) => change({ kind: event.target.value })}>
            {noteKindList.map((each) => (
              <option key={each} value={each}>
                {noteKindWords[each]}: {noteKindSense[each]}
              </option>
            ))}
          </select>
        </label>
        <button type="button" className="quiet head-end" onClick={() => navigate('/yard/papers')}>
          Back to the list
        </button>
      </header>
      {list.error === null ? null : <RefusalNote error={list.error} />}
      {list.data === undefined ? (
        <Waiting what="Looking for the next number …" />
      ) : (
        <NoteEditor key={kind} before={null} kind={kind} number={number} />
      )}
      <CautionLine about={caution} />
    </div>
  );
}
