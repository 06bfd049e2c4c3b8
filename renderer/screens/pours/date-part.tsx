// Whether the chosen pour has a date: without one it is in no plan, and three are offered.
import type { ReactNode } from 'react';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import type { PourRow } from './pour-shapes.ts';
import { useOpenDate } from './use-open-date.ts';

export function DatePart(props: { readonly row: PourRow; readonly onDates: () => void }): ReactNode {
  const { row } = props;
  const { code } = row.pour;
  const job = useJob();
  const date = useOpenDate(job.code);
  return (
    <>
      <h2>Date</h2>
      {row.dateOpen ? (
        <p className="caution-word-ink">
          No date yet: {code} is in no plan. Its dates only say how long it takes.
        </p>
      ) : null}
      {date.error === null ? null : <RefusalNote error={date.error} />}
      <p className="date-acts">
        <button type="button" className={row.dateOpen ? 'primary' : undefined} onClick={props.onDates}>
          Three dates for {code}
        </button>
        <button
          type="button"
          className="quiet"
          disabled={date.busy}
          onClick={() => date.setOpen(code, !row.dateOpen)}
        >
          {row.dateOpen ? 'The date entered stands' : 'It has no date yet'}
        </button>
      </p>
    </>
  );
}
