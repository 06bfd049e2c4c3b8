// The settings of the job's planning, changed one at a time: each change can be undone, a refusal stays to be read.
import { useCommand, useCore } from '../../client/core.tsx';
import type { Refused } from '../../client/refused.ts';
import type { Output } from '../../client/shapes.ts';
import { useJob } from '../../parts/job.tsx';
import { useUndo } from '../../parts/undo.tsx';

export type Planning = Output<'planning.read'>;
export type Settings = Planning['settings'];

export interface PlanningEdit {
  readonly planning: Planning;
  /** Whether it was kept. */
  readonly set: (changes: Partial<Settings>, words: string) => Promise<boolean>;
  readonly error: Refused | null;
  readonly busy: boolean;
}

export function usePlanning(): { readonly edit: PlanningEdit | null; readonly error: Refused | null } {
  const job = useJob().code;
  const read = useCore('planning.read', { job });
  const { mutateAsync, error, isPending } = useCommand('planning.save');
  const { remember } = useUndo();
  if (read.data === undefined) return { edit: null, error: read.error };
  const { settings } = read.data;
  const set = async (changes: Partial<Settings>, words: string): Promise<boolean> => {
    const next = { ...settings, ...changes };
    try {
      await mutateAsync({ job, settings: next });
    } catch {
      // Said where the change was asked for.
      return false;
    }
    remember({
      words,
      undo: () => mutateAsync({ job, settings }),
      redo: () => mutateAsync({ job, settings: next }),
    });
    return true;
  };
  return { edit: { planning: read.data, set, error, busy: isPending }, error: null };
}
