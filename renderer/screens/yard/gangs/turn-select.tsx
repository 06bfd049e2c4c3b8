// The turns of the job's plan that ask for a design, in the order in which they begin.
import type { ReactNode } from 'react';
import { useCore } from '../../../client/core.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import type { DraftError } from '../booking-draft.ts';
import { SelectField } from './form-parts.tsx';

export function TurnSelect(props: {
  readonly label: string;
  readonly value: string;
  /** Only turns of this design; all, if absent. */
  readonly design?: string;
  readonly error?: DraftError | undefined;
  readonly onChange: (turn: string) => void;
}): ReactNode {
  const board = useCore('board.read', { job: useJob().code });
  const words = useTimeWords();
  const turns = (board.data?.turns ?? [])
    .filter((turn) => props.design === undefined || turn.design === props.design)
    .toSorted((one, other) => Date.parse(one.from) - Date.parse(other.from) || (one.id < other.id ? -1 : 1));
  return (
    <SelectField
      label={props.label}
      value={props.value}
      none="none"
      options={turns.map(
        (turn) => [turn.id, `${turn.id} · ${turn.design} · ${words.full(turn.from)}`] as const,
      )}
      error={props.error}
      onChange={props.onChange}
    />
  );
}
