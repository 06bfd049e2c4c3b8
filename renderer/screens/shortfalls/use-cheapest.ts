// The cheapest way out of every shortfall on the list, found one after another, so that the list stands at once and whoever asks
// for something else in between waits for one of them at most. The pane of a shortfall asks the same question.
import { useState } from 'react';
import { useCore } from '../../client/core.tsx';
import type { Shortfall } from './shortfall-rows.ts';
import type { Way } from './way-text.ts';

/** By the id of the shortfall; null where there is no way out. */
export type Cheapest = ReadonlyMap<string, Way | null>;

/** So many are looked for by themselves; the others when they are opened. */
const mostAhead = 12;
const none: Cheapest = new Map();

export function useCheapest(
  job: string,
  shortfalls: readonly Shortfall[],
  live: { readonly now?: string },
): { readonly cheapest: Cheapest; readonly looking: string | null } {
  // A changed book gives another list, and all is looked for again.
  const [found, setFound] = useState({ of: shortfalls, cheapest: none });
  const cheapest = found.of === shortfalls ? found.cheapest : none;
  const next = shortfalls.slice(0, mostAhead).find(({ id }) => !cheapest.has(id));
  const ways = useCore(
    'shortfall.ways',
    { job, component: next?.component ?? '-', from: next?.from ?? '2000-01-01T00:00:00Z', ...live },
    { enabled: next !== undefined },
  );
  const isOfNext =
    next !== undefined &&
    !ways.isPlaceholderData &&
    !ways.isFetching &&
    (ways.data !== undefined || ways.error !== null);
  if (isOfNext) {
    const way = ways.data?.shortfall.id === next.id ? (ways.data.ways[0] ?? null) : null;
    setFound({ of: shortfalls, cheapest: new Map([...cheapest, [next.id, way]]) });
  }
  return { cheapest, looking: next?.id ?? null };
}
