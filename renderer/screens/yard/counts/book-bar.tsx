// Booking the count: how far it is explained, what is left out, and the refusal where something is not.
import { type ReactNode, useState } from 'react';
import { type Output, useCommand } from '../../../client/core.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import { beginLine, type ExplainDraft, isExplained, lineKeyOf, toExplained } from './explain-draft.ts';

export function BookBar(props: {
  readonly id: string;
  readonly list: Output<'count.differences'>;
  readonly draft: ExplainDraft;
}): ReactNode {
  const { id, list, draft } = props;
  const book = useCommand('count.book');
  const words = useTimeWords();
  const [leaveOut, setLeaveOut] = useState(false);
  const counted = list.lines.filter((line) => line.state === 'counted');
  const differing = counted.filter((line) => line.difference !== 0 || line.conditionMoves.length > 0);
  const draftOf = (line: (typeof counted)[number]) => draft[lineKeyOf(line)] ?? beginLine(line);
  const explained = differing.filter((line) => isExplained(line, draftOf(line)));
  if (list.count.state !== 'open') {
    const { result } = list;
    return (
      <p className="book-bar">
        {result === null
          ? 'This count was given up: nothing was booked.'
          : `Booked ${words.full(result.at)} by ${result.who}. What differed stands in the ledger as movements with note ${list.count.name}.`}
      </p>
    );
  }
  return (
    <form
      className="book-bar"
      onSubmit={(event) => {
        event.preventDefault();
        if (book.isPending) return;
        book.mutate({
          count: id,
          entries: list.entries,
          leaveOut,
          explained: differing.map((line) => toExplained(line, draftOf(line))),
        });
      }}
    >
      <span>
        {differing.length === 0
          ? 'No differences.'
          : `${explained.length} of ${differing.length} ${differing.length === 1 ? 'difference' : 'differences'} explained.`}
      </span>
      {list.waiting > 0 ? (
        <label className="tick">
          <input type="checkbox" checked={leaveOut} onChange={(event) => setLeaveOut(event.target.checked)} />
          leave out {list.waiting} not counted
        </label>
      ) : null}
      <button type="submit" className="primary" disabled={counted.length === 0}>
        Book the count
      </button>
      {book.error === null ? null : <RefusalNote error={book.error} />}
    </form>
  );
}
