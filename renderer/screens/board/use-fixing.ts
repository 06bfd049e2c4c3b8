// What a person fixes, lets go of, or takes back of what was told, as commands that can be undone where the book allows.
import { useCallback } from 'react';
import { useCommand, useCore } from '../../client/core.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { useUndo } from '../../parts/undo.tsx';
import type { Alternative } from './gang-words.ts';

export type FixedChoice = Alternative['choice'];

export interface FixedEntry {
  readonly id: string;
  readonly choice: FixedChoice;
  readonly whyNot: string | null;
  readonly costCents: number | null;
  readonly unmetMore: number;
}

export interface Fixing {
  /** With what each costs; empty until it is known. */
  readonly entries: readonly FixedEntry[];
  readonly error: Error | null;
  readonly busy: boolean;
  /** Fixes a choice in place of those that stand in its way. */
  readonly fix: (choice: FixedChoice, inPlaceOf: readonly FixedChoice[], words: string) => void;
  readonly drop: (entry: FixedEntry, words: string) => void;
}

export function sameChoice(one: FixedChoice, other: FixedChoice): boolean {
  if (one.kind === 'follow') return other.kind === 'follow' && one.from === other.from && one.to === other.to;
  return other.kind !== 'follow' && one.kind === other.kind && one.turn === other.turn;
}

export function useFixing(job: string): Fixing {
  const list = useCore('fixed.list', { job, ...useLiveNow(job) });
  const set = useCommand('fixed.set');
  const dropping = useCommand('fixed.drop');
  const { remember } = useUndo();
  const { mutateAsync: setFixed } = set;
  const { mutateAsync: dropFixed } = dropping;
  const entries = list.data?.fixed;

  const fix = useCallback(
    (choice: FixedChoice, inPlaceOf: readonly FixedChoice[], words: string) => {
      const replaced = (entries ?? []).filter((entry) =>
        inPlaceOf.some((each) => sameChoice(each, entry.choice)),
      );
      // What is put back gets a new entry, so that the ids of both ways are kept as they change.
      const forth = async (before: readonly string[]): Promise<string> => {
        for (const id of before) await dropFixed({ job, id });
        return (await setFixed({ job, choice })).id;
      };
      let now = '';
      const run = async (): Promise<void> => {
        let old = replaced.map(({ id }) => id);
        now = await forth(old);
        remember({
          words,
          undo: async () => {
            await dropFixed({ job, id: now });
            old = [];
            for (const entry of replaced) old.push((await setFixed({ job, choice: entry.choice })).id);
          },
          redo: async () => {
            now = await forth(old);
          },
        });
      };
      // A refusal stays in the command's error and is shown.
      void run().catch(() => undefined);
    },
    [entries, dropFixed, setFixed, job, remember],
  );

  const drop = useCallback(
    ({ id, choice }: FixedEntry, words: string) => {
      let last = id;
      void dropFixed({ job, id })
        .then(() =>
          remember({
            words,
            undo: async () => {
              last = (await setFixed({ job, choice })).id;
            },
            redo: () => dropFixed({ job, id: last }),
          }),
        )
        .catch(() => undefined);
    },
    [dropFixed, setFixed, job, remember],
  );

  return {
    entries: entries ?? [],
    error: set.error ?? dropping.error,
    busy: set.isPending || dropping.isPending,
    fix,
    drop,
  };
}
