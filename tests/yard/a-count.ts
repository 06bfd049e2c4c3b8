// Counts for tests: a yard, a rack, a pour and the places outside, ours and a supplier's pieces.
import type { DifferenceFacts } from '../../core/yard/count-differences.ts';
import type { Condition, Location, LocationKind, Movement, Owner } from '../../core/yard/movement.ts';
import { type StockLine, stockAfter } from '../../core/yard/quantities.ts';
import type { CountEntry, CountLine } from '../../core/yard/stock-count.ts';

const kinds: Readonly<Record<string, LocationKind>> = {
  YARD: 'yard',
  RACK: 'rack',
  POUR: 'pour',
  SHOP: 'repair',
  JOB: 'other-job',
  H1: 'supplier',
  SCRAP: 'scrap',
  LOST: 'lost',
  START: 'opening',
};
export const locations: readonly Location[] = Object.entries(kinds).map(([code, kind]) => ({
  code,
  name: code,
  kind,
}));
export const owners: readonly Owner[] = [
  { code: 'H1', name: 'Hired in', kind: 'supplier', agreement: 'A-17' },
  { code: 'OURS', name: 'Ours', kind: 'ours', agreement: null },
  { code: 'ANY', name: 'Not ours', kind: 'others', agreement: null },
];

export const begun = '2026-03-02T07:00:00-05:00';
export const counted = '2026-03-10T16:00:00-04:00';

let made = 0;

/** Ten ready pieces of LK of ours that come to the yard, unless told otherwise. */
export function move(more: Partial<Movement> = {}): Movement {
  made += 1;
  return {
    id: `movement-${made}`,
    component: 'LK',
    quantity: 10,
    owner: 'OURS',
    from: 'START',
    to: 'YARD',
    condition: 'ready',
    conditionAfter: more.condition ?? 'ready',
    reason: 'transfer',
    at: begun,
    who: 'yard',
    noteNumber: null,
    remark: null,
    basis: null,
    basisDate: null,
    reverses: null,
    paper: null,
    ...more,
  };
}

export function stockAt(ledger: readonly Movement[], at: string): readonly StockLine[] {
  return stockAfter(ledger.filter((each) => Date.parse(each.at) <= Date.parse(at)));
}

export type Found = Readonly<Partial<Record<Condition, number>>>;

/** What one counter found on some lines. */
export function entry(
  number: number,
  lines: readonly (CountLine & { readonly found: Found; readonly uncertainty?: number })[],
  more: Partial<CountEntry> = {},
): CountEntry {
  return {
    id: `entry-${number}`,
    number,
    counter: 1,
    at: counted,
    who: 'counter',
    device: 'here',
    lines: lines.flatMap(({ location, component, owner, found, uncertainty }) =>
      Object.entries(found).map(([condition, quantity], index) => ({
        location,
        component,
        owner,
        condition: condition as Condition,
        quantity,
        ...(index === 0 && uncertainty !== undefined && { uncertainty }),
      })),
    ),
    ...more,
  };
}

export function line(component = 'LK', location = 'YARD', owner: string | null = null): CountLine {
  return { location, component, owner };
}

export function facts(
  ledger: readonly Movement[],
  lines: readonly CountLine[],
  entries: readonly CountEntry[],
  more: Partial<DifferenceFacts> = {},
): DifferenceFacts {
  return {
    count: { lines: [...lines], counters: 1 },
    entries,
    stockAt: (at) => stockAt(ledger, at),
    locations: new Map(locations.map(({ code, kind }) => [code, kind])),
    owners: new Map(owners.map(({ code, kind }) => [code, kind])),
    classes: new Map(),
    valueCents: () => null,
    onTheRoad: () => 0,
    ...more,
  };
}
