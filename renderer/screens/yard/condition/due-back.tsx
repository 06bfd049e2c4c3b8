// What is due back to ready, a line a day: cleaned, repaired and promised.
import type { ReactNode } from 'react';
import { useTimeWords } from '../../../parts/job-time.ts';
import { dateWords } from '../../../parts/time-words.ts';
import { backWords, type BackRow, byDay } from './care-words.ts';

export function DueBack(props: { readonly rows: readonly BackRow[] }): ReactNode {
  const words = useTimeWords();
  const days = byDay(props.rows);
  return (
    <section className="due-back" aria-label="Due back to ready">
      <h2>Due back to ready</h2>
      {days.length === 0 ? (
        <p className="soft">
          Nothing has a day on which it is due back: what is to clean is past its time, and no repair or
          delivery is promised.
        </p>
      ) : (
        <dl>
          {days.map(([date, rows]) => (
            <div key={date}>
              <dt>{dateWords(date)}</dt>
              <dd>
                {rows.map((row) => (
                  <span key={`${row.component} ${row.from}`} className="back-piece">
                    <b>
                      {row.quantity} {row.component}
                    </b>{' '}
                    <span className="soft">
                      {backWords[row.from]} by {words.time(row.at)}
                    </span>
                  </span>
                ))}
              </dd>
            </div>
          ))}
        </dl>
      )}
    </section>
  );
}
