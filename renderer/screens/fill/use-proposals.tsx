// Proposals for what was asked. They stay as they were answered, also when the book changes, since gangs are named and
// kept by them; asking again is done by hand.
import { type ReactNode, useEffect, useState } from 'react';
import { type Output, useCore } from '../../client/core.tsx';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import type { Asked } from './fill-shapes.ts';
import type { FillProblems } from './fill-texts.ts';
import { refusedField } from './refused-field.ts';

const nothing: Asked = { system: '', useStock: null, useDesigns: false };

export interface Answered {
  /** Null while it is waited for or refused; then `waiting` says so. */
  readonly answer: Output<'fill.propose'> | null;
  readonly waiting: ReactNode;
  /** Another one for every answer. */
  readonly key: string;
  readonly problems: FillProblems;
  readonly again: () => void;
}

export function useProposals(asked: Asked | null): Answered {
  const key = JSON.stringify(asked);
  const [settled, setSettled] = useState<string | null>(null);
  const isSettled = settled === key;
  const { data, error, isPlaceholderData, isFetching, dataUpdatedAt } = useCore(
    'fill.propose',
    asked ?? nothing,
    { enabled: asked !== null && !isSettled },
  );
  const isAnswered = data !== undefined && !isPlaceholderData && !isFetching && error === null;
  if (asked !== null && isAnswered && !isSettled) setSettled(key);
  const field = refusedField(error?.field);
  return {
    answer: isAnswered ? data : null,
    waiting: error !== null && !isFetching ? <RefusalNote error={error} /> : <Asking key={key} />,
    key: `${dataUpdatedAt}`,
    problems:
      error === null || field === undefined ? {} : { [field]: `${error.message} ${error.hint ?? ''}`.trim() },
    again: () => setSettled(null),
  };
}

/** How long it has been going on: nobody knows how long a proof takes. */
function Asking(): ReactNode {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => setSeconds((was) => was + 1), 1000);
    return () => clearInterval(timer);
  }, []);
  return (
    <div className="fill-asking">
      <Waiting what="Filling both sides, until nothing better is left …" />
      <progress aria-label="Filling" />
      <span aria-hidden="true" className="soft">
        {seconds} s
      </span>
    </div>
  );
}
