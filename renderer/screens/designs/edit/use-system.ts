// The panel system of an open design, as far as places and sizes go: the renderer looks panels up in it, what the
// rules make of them the core says.
import { useMemo } from 'react';
import { type PanelSystem, panelSystem } from '../../../../core/catalogue/system.ts';
import { type Output, useCore } from '../../../client/core.tsx';
import { Refused } from '../../../client/refused.ts';
import type { PanelSizes } from './draft-pieces.ts';

export interface SystemRead {
  readonly code: string;
  readonly system: PanelSystem;
  readonly systems: Output<'rules.read'>['systems'];
}

/** Without a code the first of the book. */
export function useSystem(code: string | null): {
  readonly data: SystemRead | undefined;
  readonly error: Error | null;
} {
  const read = useCore('rules.read', code === null ? {} : { system: code });
  const { data } = read;
  const made = useMemo(
    () => (data === undefined ? undefined : panelSystem(data.components, data.rules)),
    [data],
  );
  return useMemo(() => {
    if (read.error !== null) return { data: undefined, error: read.error };
    if (data === undefined || made === undefined) return { data: undefined, error: null };
    if (!made.ok) return { data: undefined, error: new Refused(made.error) };
    return { data: { code: data.system, system: made.value, systems: data.systems }, error: null };
  }, [read.error, data, made]);
}

export function useSizes(system: PanelSystem): PanelSizes {
  return useMemo(
    () => new Map(system.panels.map(({ code, widthNm, heightNm }) => [code, { widthNm, heightNm }])),
    [system],
  );
}
