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
      {more > 0 ? <Link href="/shortfalls">and {more} more</Link> : null}
    </p>
  );
}

/** All of it, also what is promised, due out, kept back, and of which the figure is weak. */
export function YardList(props: {
  readonly notes: readonly YardNote[];
  readonly words: TimeWords;
}): ReactNode {
  if (props.notes.length === 0) return null;
  return (
    <section className="tight" aria-label="What the yard changes">
      <h2>What the yard changes</h2>
      <ul>
        {props.notes.map((note) => (
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
    </section>
  );
}

export function YardNoteLink(props: { readonly note: YardNote; readonly words: TimeWords }): ReactNode {
  return <Link href={yardNoteAddress(props.note)}>{yardNoteWords(props.note, props.words)}</Link>;
}

function keyOf(note: YardNote): string {
  return [note.kind, note.component, note.paper?.id ?? '', note.since ?? '', note.until ?? ''].join(' ');
}
