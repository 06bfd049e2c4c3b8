// A page of the ledger and the way to the older and newer ones.
import { useMemo, useState } from 'react';
import { type Output, useCore } from '../../client/core.tsx';
import type { LedgerLinks } from './movement-columns.tsx';
import type { MovementRow } from './yard-words.ts';

export interface MovementPage {
  readonly answer: Output<'yard.movements'> | undefined;
  readonly error: Error | null;
  readonly rows: readonly MovementRow[];
  readonly older: (() => void) | null;
  readonly newer: (() => void) | null;
  readonly links: LedgerLinks;
}

export function useMovements(
  of: { readonly component?: string; readonly location?: string },
  onGo: (id: string) => void,
  limit: number,
): MovementPage {
  // Numbers before which each page further back begins; the newest page has none.
  const [before, setBefore] = useState<readonly number[]>([]);
  const beforeNumber = before.at(-1);
  const page = useCore('yard.movements', {
    ...of,
    ...(beforeNumber === undefined ? {} : { beforeNumber }),
    limit,
  });
  const rows = page.data?.rows ?? none;
  const last = rows.at(-1);
  const links = useMemo<LedgerLinks>(
    () => ({ numbers: new Map(rows.map((row) => [row.id, row.number])), onGo }),
    [rows, onGo],
  );
  return {
    answer: page.data,
    error: page.error,
    rows,
    older:
      page.data?.more === true && last !== undefined ? () => setBefore((old) => [...old, last.number]) : null,
    newer: before.length > 0 ? () => setBefore((old) => old.slice(0, -1)) : null,
    links,
  };
}

const none: readonly MovementRow[] = [];
