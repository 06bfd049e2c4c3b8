// A proposed move and its life: asked of the core, kept by a command, taken back by putting the pours back as
// they were.
import { useCallback, useState } from 'react';
import { useCommand, useCore } from '../../client/core.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { useUndo } from '../../parts/undo.tsx';
import type { Move, Whatif } from './board-types.ts';
import { moveWords } from './move-text.ts';

export interface Moves {
  readonly moves: readonly Move[];
  readonly answer: Whatif | undefined;
  readonly working: boolean;
  readonly keeping: boolean;
  readonly error: Error | null;
  readonly propose: (moves: readonly Move[]) => void;
  readonly keep: () => void;
  readonly leave: () => void;
}

const none: readonly Move[] = [];

/** `today` is the day whose steps and whose next day's steps are compared, for the moves that are proposed. */
export function useMoves(job: string, todayOf: (moves: readonly Move[]) => string): Moves {
  const [moves, setMoves] = useState<readonly Move[]>(none);
  const live = useLiveNow(job);
  const asked = useCore(
    'plan.whatif',
    { job, moves: moves.map((move) => ({ ...move })), today: todayOf(moves), ...live },
    { enabled: moves.length > 0 },
  );
  const command = useCommand('pour.move');
  const { mutateAsync: savePour } = useCommand('pour.save');
  const { remember } = useUndo();
  const { mutateAsync } = command;

  const propose = useCallback((proposed: readonly Move[]) => {
    setMoves(proposed.filter((move) => move.workingDays !== 0));
  }, []);
  const leave = useCallback(() => setMoves(none), []);
  const keep = useCallback(() => {
    if (moves.length === 0) return;
    const forth = moves.map((move) => ({ ...move }));
    // A refusal stays in `command.error` and is shown in the pane.
    void mutateAsync({ job, moves: forth })
      .then(({ before }) => {
        setMoves(none);
        return remember({
          words: moveWords(moves),
          undo: async () => {
            for (const pour of before) await savePour({ job, pour });
          },
          redo: () => mutateAsync({ job, moves: forth }),
        });
      })
      .catch(() => undefined);
  }, [moves, mutateAsync, savePour, job, remember]);

  return {
    moves,
    answer: moves.length === 0 || asked.isPlaceholderData ? undefined : asked.data,
    working: asked.isFetching,
    keeping: command.isPending,
    error: moves.length === 0 ? null : (asked.error ?? command.error),
    propose,
    keep,
    leave,
  };
}
