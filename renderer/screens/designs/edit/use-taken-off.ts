// The take-off of a design while it is edited: asked for when its geometry has come to rest for a moment; the
// last answer stays until the next is there.
import { useEffect, useState } from 'react';
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import { type Output, useCore } from '../../../client/core.tsx';

export type TakenOff = Output<'design.draft'>;

export interface Asked {
  readonly takenOff: TakenOff | undefined;
  readonly error: Error | null;
  /** Whether the answer is of an older state than the one shown. */
  readonly behind: boolean;
}

const restMs = 40;

/** @param design code of the design that is edited, which it is not held against; null for a new one */
export function useTakenOff(system: string, geometry: DesignGeometry, design: string | null): Asked {
  const rested = useRested(geometry);
  const empty = rested.panels.length === 0;
  const asked = useCore(
    'design.draft',
    { system, geometry: rested, ...(design === null ? {} : { design }) },
    { enabled: !empty && system !== '' },
  );
  const refused = asked.error !== null && !asked.isPlaceholderData;
  return {
    takenOff: empty || refused ? undefined : asked.data,
    error: empty ? null : asked.error,
    behind: rested !== geometry || asked.isPlaceholderData,
  };
}

function useRested<T>(value: T): T {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    if (value === rested) return undefined;
    const timer = setTimeout(() => setRested(value), restMs);
    return () => clearTimeout(timer);
  }, [value, rested]);
  return rested;
}
