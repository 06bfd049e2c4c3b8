// One line over the days: what the yard takes away from the plan, each with its paper. Nothing where it takes nothing.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { TimeWords } from './time-words.ts';
import { isTold, type YardNote, yardNoteAddress, yardNoteWords } from './yard-note-words.ts';
import '../style/yard-strip.css';

const most = 4;

export function YardStrip(props: {
  readonly notes: readonly YardNote[];
  readonly words: TimeWords;
}): ReactNode {
  const told = props.notes.filter(isTold);
  if (told.length === 0) return null;
  const more = told.length - most;
  return (
    <p className="yard-strip">
      <span className="yard-strip-head">Yard</span>
      {told.slice(0, most).map((note) => (
        <YardNoteLink key={keyOf(note)} note={note} words={props.words} />
      ))}
      {more > 0 ? <Link href="/shortfalls?yard=open">and {more} more</Link> : null}
    </p>
  );
}

/** All of it, also what is promised, due out, kept back, and of which the figure is weak; closed until it is wanted. */
export function YardList(props: {
  readonly notes: readonly YardNote[];
  readonly words: TimeWords;
  readonly isOpen: boolean;
  readonly onToggle: (isOpen: boolean) => void;
}): ReactNode {
  const { notes, onToggle } = props;
  if (notes.length === 0) return null;
  return (
    <details
      className="tight yard-list"
      open={props.isOpen}
      onToggle={(event) => {
        if (event.currentTarget.open !== props.isOpen) onToggle(event.currentTarget.open);
      }}
    >
      <summary>
        What the yard changes: {notes.length} {notes.length === 1 ? 'thing' : 'things'}
      </summary>
      <ul>
        {notes.map((note) => (
          <li key={keyOf(note)}>
            <YardNoteLink note={note} words={props.words} />
            <span className="soft">
              {note.shortfalls.length === 0
                ? note.name
                : `${note.name}; ${note.shortfalls.length === 1 ? '1 shortfall rests' : `${note.shortfalls.length} shortfalls rest`} on it`}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

export function YardNoteLink(props: { readonly note: YardNote; readonly words: TimeWords }): ReactNode {
  return <Link href={yardNoteAddress(props.note)}>{yardNoteWords(props.note, props.words)}</Link>;
}

function keyOf(note: YardNote): string {
  return [note.kind, note.component, note.paper?.id ?? '', note.since ?? '', note.until ?? ''].join(' ');
}
