// The yard's settings, changed one at a time: the whole is read, one thing put in its place, and saved; undone by
// saving what was there before.
import { useCallback } from 'react';
import { type Output, useCommand, useCore } from '../../../client/core.tsx';
import { useUndo } from '../../../parts/undo.tsx';

export type Settings = Output<'yard.settings.read'>['settings'];

export interface SettingsEdit {
  readonly settings: Settings | undefined;
  readonly error: unknown;
  /** @param words what is done, as "count blind" */
  readonly set: (part: Partial<Settings>, words: string) => void;
  readonly setClass: (component: string, to: 'A' | 'B' | 'C' | null) => void;
}

export function useSettings(): SettingsEdit {
  const read = useCore('yard.settings.read', {});
  const { mutateAsync, error } = useCommand('yard.settings.save');
  const { remember } = useUndo();
  const settings = read.data?.settings;
  const set = useCallback(
    (part: Partial<Settings>, words: string) => {
      if (settings === undefined) return;
      const next = { ...settings, ...part };
      const save = (to: Settings) => mutateAsync({ settings: to });
      const run = async (): Promise<void> => {
        try {
          const { before } = await save(next);
          remember({ words, undo: () => save(before), redo: () => save(next) });
        } catch {
          // The refusal stands on the screen: the command keeps it.
        }
      };
      void run();
    },
    [settings, mutateAsync, remember],
  );
  const setClass = useCallback(
    (component: string, to: 'A' | 'B' | 'C' | null) => {
      const { [component]: _, ...rest } = settings?.classes ?? {};
      const classes = to === null ? rest : { ...rest, [component]: to };
      set({ classes }, to === null ? `rank ${component} by value` : `put ${component} into class ${to}`);
    },
    [settings, set],
  );
  return { settings, error: read.error ?? error, set, setClass };
}
