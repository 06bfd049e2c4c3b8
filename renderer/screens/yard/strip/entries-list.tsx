// Who counted what, when, on which device; parts of a count add up.
import type { ReactNode } from 'react';
import { useTimeWords } from '../../../parts/job-time.ts';
import type { Ticket } from './asked.ts';
import { piecesWords } from './strip-words.ts';

export function EntriesList(props: { readonly entries: Ticket['entries'] }): ReactNode {
  const words = useTimeWords();
  return (
    <section className="strip-side-part" aria-label="Who counted">
      <h2>Counted so far</h2>
      {props.entries.length === 0 ? (
        <p className="soft">Nobody has entered anything. Counts of several people add up.</p>
      ) : (
        <ul className="strip-entries">
          {props.entries.map((entry) => (
            <li key={entry.id}>
              <b>{entry.who}</b> {words.full(entry.at)}
              {entry.device === 'here' ? '' : `, ${entry.device}`}: {piecesWords(entry.pieces)} in{' '}
              {entry.lines} {entry.lines === 1 ? 'line' : 'lines'}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
