// Proposed changes and their life: asked of the core, carried out in one step that undo takes back, or left.
import { useCallback, useMemo, useState } from 'react';
import { useCore } from '../../client/core.tsx';
import type { PlanChange } from '../../parts/changes/change-text.ts';
import { aboutWords, type ChangeNames } from '../../parts/changes/change-words.ts';
import { useApply } from '../../parts/changes/use-apply.ts';
import { useLiveNow } from '../../parts/live-now.ts';
import type { Move, Whatif } from './board-types.ts';

export interface Moves {
  readonly changes: readonly PlanChange[];
  /** The moves among them, for drawing. */
  readonly moves: readonly Move[];
  readonly answer: Whatif | undefined;
  readonly working: boolean;
  readonly keeping: boolean;
  readonly error: Error | null;
  readonly propose: (changes: readonly PlanChange[]) => void;
  readonly keep: () => void;
  readonly leave: () => void;
}

const none: readonly PlanChange[] = [];

/** `todayOf` is the day whose steps and whose next day's steps are compared, by the pours that are touched. */
export function useMoves(
  job: string,
  todayOf: (moves: readonly Move[]) => string,
  names: ChangeNames,
): Moves {
  const [changes, setChanges] = useState<readonly PlanChange[]>(none);
  const moves = useMemo(() => changes.filter((each) => each.kind === 'move'), [changes]);
  const live = useLiveNow(job);
  const asked = useCore(
    'plan.whatif',
    { job, changes: [...changes], today: todayOf(touchedBy(changes)), ...live },
    { enabled: changes.length > 0 },
  );
  const { apply, busy, error, reset } = useApply(job);

  const propose = useCallback(
    (proposed: readonly PlanChange[]) => {
      reset();
      setChanges(proposed.filter((each) => each.kind !== 'move' || each.workingDays !== 0));
    },
    [reset],
  );
  const leave = useCallback(() => setChanges(none), []);
  const keep = useCallback(() => {
    if (changes.length === 0) return;
    // A refusal stays in `error` and is shown in the pane.
    void apply(changes, aboutWords(changes, names))
      .then(() => setChanges(none))
      .catch(() => undefined);
  }, [changes, apply, names]);

  return {
    changes,
    moves,
    answer: changes.length === 0 || asked.isPlaceholderData ? undefined : asked.data,
    working: asked.isFetching,
    keeping: busy,
    error: changes.length === 0 ? null : (asked.error ?? error),
    propose,
    keep,
    leave,
  };
}

/** Pours that a change speaks of; but for moves where they stand. */
function touchedBy(changes: readonly PlanChange[]): readonly Move[] {
  return changes.flatMap((change) =>
    'pour' in change
      ? [{ pour: change.pour, workingDays: change.kind === 'move' ? change.workingDays : 0 }]
      : [],
  );
}
