// A draft being written: its head, its lines, and at the side what booking it would do and the photos that belong to it.
import type { Places } from '../yard-words.ts';
import { type ReactNode, useMemo, useState } from 'react';
import { useCore } from '../../../client/core.tsx';
import type { JobClock } from '../../../parts/job-clock.ts';
import { useJobClock } from '../../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { useWindowKeys } from '../../../parts/window-keys.ts';
import type { ComponentChoice } from '../component-field.tsx';
import { Attachments } from './attachments.tsx';
import { BookNote } from './book-note.tsx';
import { newNote, usualOwner } from './new-note.ts';
import { emptyNoteLine, isEmptyLine, type NoteDraft, type NoteDraftLine } from './note-draft.ts';
import { NoteFields } from './note-fields.tsx';
import { NoteLines } from './note-lines.tsx';
import { comesIn, type Note, type NoteKind } from './note-words.ts';
import { PasteLines } from './paste-lines.tsx';
import { useNote } from './use-note.ts';

export function NoteEditor(props: {
  /** As the book has it; null for a new one. */
  readonly before: Note | null;
  readonly kind: NoteKind;
  readonly number: string;
}): ReactNode {
  const places = useCore('yard.places', {});
  const list = useCore('component.list', {});
  const clock = useJobClock();
  const error = places.error ?? list.error;
  if (error !== null) return <RefusalNote error={error} />;
  if (places.data === undefined || list.data === undefined || clock === null)
    return <Waiting what="Reading places and components …" />;
  return <Desk {...props} places={places.data} components={list.data.components} clock={clock} />;
}

function Desk(props: {
  readonly before: Note | null;
  readonly kind: NoteKind;
  readonly number: string;
  readonly places: Places;
  readonly components: readonly ComponentChoice[];
  readonly clock: JobClock;
}): ReactNode {
  const { before, kind, number, places, components, clock } = props;
  const [fresh] = useState(() => newNote(kind, number, places, () => crypto.randomUUID()));
  const desk = useNote(before, fresh, components, clock);
  const [pasted, setPasted] = useState<string | null>(null);
  const { draft, edit } = desk;
  const owner = usualOwner(draft, places);
  const known = useMemo(
    () => ({
      components: components.map(({ code }) => code),
      owners: places.owners.map(({ code }) => code),
      owner,
    }),
    [components, places, owner],
  );
  useWindowKeys((event) => {
    if (event.key.toLowerCase() !== 's' || !(event.ctrlKey || event.metaKey) || event.defaultPrevented)
      return;
    event.preventDefault();
    void desk.save();
  });
  const withLines = (by: (lines: readonly NoteDraftLine[]) => readonly NoteDraftLine[]): void =>
    edit((old) => ({ ...old, lines: by(old.lines) }));
  const add = (): void =>
    withLines((lines) => [...lines, emptyNoteLine(crypto.randomUUID(), lines.at(-1)?.owner ?? owner)]);
  return (
    <div className="screen-body">
      <div className="pane grow note-desk">
        <NoteFields
          draft={draft}
          errors={desk.errors}
          places={places}
          onChange={(part) => edit((old) => withEnds(old, part, places))}
        />
        <NoteLines
          draft={draft}
          errors={desk.errors}
          places={places}
          components={components}
          onLine={(index, part) =>
            withLines((lines) => lines.map((line, at) => (at === index ? { ...line, ...part } : line)))
          }
          onRemove={(index) => withLines((lines) => lines.filter((_, at) => at !== index))}
          onAdd={add}
          onRows={setPasted}
        />
        <div className="note-line-tools">
          <button type="button" onClick={add}>
            Another line
          </button>
          <button
            type="button"
            aria-expanded={pasted !== null}
            onClick={() => setPasted(pasted === null ? '' : null)}
          >
            Paste lines
          </button>
          <span className="soft">
            <kbd>Enter</kbd> next line · <kbd>=</kbd> in {comesIn(kind) ? 'Received' : 'Loaded'}: as on the
            paper · 0 for what is not there
          </span>
        </div>
        {pasted === null ? null : (
          <PasteLines
            text={pasted}
            known={known}
            onText={setPasted}
            onTake={(lines) => withLines((old) => [...old.filter((line) => !isEmptyLine(line)), ...lines])}
            onClose={() => setPasted(null)}
          />
        )}
      </div>
      <aside className="pane side note-side" aria-label="Booking and photos">
        <BookNote desk={desk} isNew={before === null} />
        {before === null ? (
          <p className="soft">Photos can be added once the draft is saved.</p>
        ) : (
          <Attachments
            paper={before.id}
            occasion={comesIn(kind) ? 'damage-at-delivery' : 'load-before-leaving'}
          />
        )}
      </aside>
    </div>
  );
}

/** Other ends bring their usual owner to lines in which nothing is written yet. */
function withEnds(old: NoteDraft, part: Partial<NoteDraft>, places: Places): NoteDraft {
  const next = { ...old, ...part };
  if (next.from === old.from && next.to === old.to) return next;
  const owner = usualOwner(next, places);
  return { ...next, lines: next.lines.map((line) => (isEmptyLine(line) ? { ...line, owner } : line)) };
}
