// A note that is booked, dropped or reversed: what the paper says beside what was counted, what it moved, what is
// claimed because of it; and at the side its reversal, what the depot counted, and its photos.
import { type ReactNode, useMemo } from 'react';
import type { Output } from '../../../client/core.tsx';
import { DataTable } from '../../../parts/data-table.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { Attachments } from './attachments.tsx';
import { bookedColumns, type BookedLine, bookedLines } from './booked-columns.tsx';
import { comesIn, claimWords, goesBack, type Note } from './note-words.ts';
import { type Moved, movedColumns } from './moved-columns.tsx';
import { ReverseNote } from './reverse-note.tsx';
import { ToldForm } from './told-form.tsx';

export function BookedNote(props: { readonly read: Output<'note.read'> }): ReactNode {
  const { note, claims, movements } = props.read;
  const words = useTimeWords();
  const lines = useMemo(() => bookedLines(note), [note]);
  const columns = useMemo(() => bookedColumns(note.kind, note.countedThere !== null), [note]);
  const moved = useMemo(() => movedColumns(movements, words), [movements, words]);
  return (
    <div className="screen-body">
      <div className="pane grow note-desk">
        <Facts note={note} />
        {claims.length === 0 ? null : (
          <section className="note note-caution" aria-label="Claims">
            <span className="note-word">Not agreed</span>
            <ul>
              {claims.map((claim, index) => (
                <li key={index}>
                  <b>
                    {claim.component} ({claim.owner})
                  </b>{' '}
                  {claimWords(claim)}
                </li>
              ))}
            </ul>
          </section>
        )}
        <DataTable
          caption={`Lines of ${note.number}`}
          columns={columns}
          rows={lines}
          rowKey={keyOfLine}
          empty="The note has no lines."
        />
        {movements.length === 0 ? null : (
          <>
            <h2 className="part-head">What it moved</h2>
            <DataTable
              caption={`Movements of ${note.number}`}
              columns={moved}
              rows={movements}
              rowKey={keyOfMovement}
              rowClass={classOfMovement}
              sortBy="number"
            />
          </>
        )}
      </div>
      <aside className="pane side note-side" aria-label="Reversal, depot count and photos">
        {note.state === 'booked' ? <ReverseNote note={note} /> : null}
        {note.state === 'booked' && goesBack(note.kind) && note.countedThere === null ? (
          <ToldForm key={note.id} note={note} />
        ) : null}
        <Attachments
          paper={note.id}
          occasion={comesIn(note.kind) ? 'damage-at-delivery' : 'load-before-leaving'}
        />
      </aside>
    </div>
  );
}

function keyOfLine(line: BookedLine): string {
  return line.key;
}

function keyOfMovement(row: Moved): string {
  return row.id;
}

function classOfMovement(row: Moved): string | undefined {
  return row.reversedBy === null ? undefined : 'reversed';
}

function Facts(props: { readonly note: Note }): ReactNode {
  const { note } = props;
  const words = useTimeWords();
  const moment = (at: string | null): string | null => (at === null ? null : words.full(at));
  const facts: readonly (readonly [string, string | null])[] = [
    ['From → to', `${note.from} → ${note.to}`],
    ['Job', note.job],
    ['Due', moment(note.expectedAt)],
    ['Truck came', moment(note.arrivedAt)],
    ['Truck left', moment(note.leftAt)],
    ['Vehicle', note.vehicle],
    ['Signed for us', note.signedHere],
    ['Signed by the other end', note.signedThere],
    ['Under protest', note.protest],
    ['Remark', note.remark],
  ];
  return (
    <dl className="note-facts">
      {facts.map(([label, value]) =>
        value === null ? null : (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ),
      )}
    </dl>
  );
}
