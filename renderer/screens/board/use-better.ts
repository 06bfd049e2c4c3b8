// The search for a better plan as the board sees it: begun, looked at twice a second while it runs, stopped, its best kept
// as the plan, and that taken back.
import { useCallback, useState } from 'react';
import { type HostOutput, useCommand, useHostCall, useHostQuery } from '../../client/core.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { useUndo } from '../../parts/undo.tsx';

export type Search = NonNullable<HostOutput<'host.improve.state'>['search']>;

export interface Better {
  /** The last search for this job; null where there was none. */
  readonly search: Search | null;
  /** Whether its best was kept already. */
  readonly kept: boolean;
  /** The job had changed meanwhile: only what still fits was kept. */
  readonly partly: boolean;
  readonly error: Error | null;
  readonly busy: boolean;
  readonly start: (seconds: number) => void;
  readonly stop: () => void;
  /** Stops it where it still runs. */
  readonly keep: () => void;
}

const everyMs = 500;

export function useBetter(job: string): Better {
  const state = useHostQuery('host.improve.state', {}, everyMs);
  const starting = useHostCall('host.improve.start');
  const stopping = useHostCall('host.improve.stop');
  const keeping = useCommand('plan.keep');
  const { remember } = useUndo();
  const live = useLiveNow(job);
  const [keptId, setKeptId] = useState<string | null>(null);
  const [partly, setPartly] = useState(false);
  const { mutateAsync: stopSearch } = stopping;
  const { mutateAsync: keepPlan } = keeping;
  const found = state.data?.search ?? null;
  const search = found?.job === job ? found : null;

  const keep = useCallback(() => {
    const run = async (): Promise<void> => {
      const { search: ended } = await stopSearch({});
      const runs = ended?.runs ?? null;
      if (ended === null || runs === null) return;
      const { id, boundCents, question } = ended;
      const better = { job, runs, boundCents, question, ...live };
      const { before, jobChanged } = await keepPlan(better);
      setKeptId(id);
      setPartly(jobChanged);
      remember({
        words: 'keep the better plan',
        undo: async () => {
          await keepPlan({ job, ...before, ...live });
          setKeptId(null);
        },
        redo: async () => {
          await keepPlan(better);
          setKeptId(id);
        },
      });
    };
    // A refusal stays in the command's error and is shown.
    void run().catch(() => undefined);
  }, [stopSearch, keepPlan, remember, job, live]);

  return {
    search,
    kept: search !== null && search.id === keptId,
    partly,
    error: starting.error ?? stopping.error ?? keeping.error ?? state.error,
    busy: starting.isPending || stopping.isPending || keeping.isPending,
    start: (seconds) => starting.mutate({ job, seconds, ...live }),
    stop: () => stopping.mutate({}),
    keep,
  };
}
