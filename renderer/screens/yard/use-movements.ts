// A page of the ledger, or of the history of a number, and the way to the older and newer ones.
import { useMemo, useState } from 'react';
import { type Input, type Output, useCore } from '../../client/core.tsx';
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

export type MovementsOf = Omit<Input<'yard.movements'>, 'beforeNumber' | 'limit'>;

export function useMovements(of: MovementsOf, onGo: (id: string) => void, limit: number): MovementPage {
  // Numbers before which each page further back begins; the newest page has none. Other filters begin anew.
  const asked = JSON.stringify(of);
  const [pages, setPages] = useState<{ readonly of: string; readonly before: readonly number[] }>({
    of: asked,
    before: [],
  });
  const before = pages.of === asked ? pages.before : [];
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
  const go = (next: readonly number[]): void => setPages({ of: asked, before: next });
  return {
    answer: page.data,
    error: page.error,
    rows,
    older: page.data?.more === true && last !== undefined ? () => go([...before, last.number]) : null,
    newer: before.length > 0 ? () => go(before.slice(0, -1)) : null,
    links,
  };
}

const none: readonly MovementRow[] = [];
