// A small yard for tests of what a plan may count on: places of every kind, two owners that count and one that does
// not, and movements written short.
import type { YardFacts } from '../../core/yard/availability.ts';
import { readyLevels } from '../../core/yard/availability.ts';
import type { Location, Movement, Owner } from '../../core/yard/movement.ts';
import type { StockLine } from '../../core/yard/quantities.ts';

export const locations: readonly Location[] = [
  { code: 'YARD', name: 'Yard', kind: 'yard' },
  { code: 'SITE', name: 'Site', kind: 'site' },
  { code: 'TB/P1', name: 'Pour', kind: 'pour' },
  { code: 'G-1', name: 'Gang', kind: 'gang' },
  { code: 'SHOP', name: 'Repair shop', kind: 'repair' },
  { code: 'JOB2', name: 'Another job', kind: 'other-job' },
  { code: 'H1', name: 'Supplier', kind: 'supplier' },
  { code: 'SCRAP', name: 'Scrap', kind: 'scrap' },
  { code: 'LOST', name: 'Lost', kind: 'lost' },
];

export const owners: readonly Owner[] = [
  { code: 'ours', name: 'Ours', kind: 'ours', agreement: null },
  { code: 'H1', name: 'Supplier', kind: 'supplier', agreement: 'A-1' },
  { code: 'other', name: 'Not ours', kind: 'others', agreement: null },
];

export const hour = 3_600_000;
/** Hours after the start of the plan, Monday 2 March 2026 00:00 UTC. */
export const startMs = Date.parse('2026-03-02T00:00:00Z');
export const at = (hours: number): string => new Date(startMs + hours * hour).toISOString();

export const line = (changes: Partial<StockLine>): StockLine => ({
  component: 'LK',
  owner: 'ours',
  location: 'YARD',
  condition: 'ready',
  quantity: 10,
  basis: 'counted',
  basisDate: '2026-02-20',
  ...changes,
});

let made = 0;
export const movement = (changes: Partial<Movement>): Movement => ({
  id: `m-${(made += 1)}`,
  component: 'LK',
  quantity: 4,
  owner: 'ours',
  from: 'H1',
  to: 'YARD',
  condition: 'ready',
  conditionAfter: changes.condition ?? 'ready',
  reason: 'delivery',
  at: '2026-03-05T09:00:00-05:00',
  who: 'yard',
  noteNumber: null,
  remark: null,
  basis: null,
  basisDate: null,
  reverses: null,
  paper: null,
  ...changes,
});

/** Cleaning takes 15 hours by the clock. */
export const yardOf = (changes: Partial<YardFacts> = {}): YardFacts => ({
  start: [],
  dirtyAtStart: [],
  movements: [],
  locations,
  owners,
  cleanMs: 15 * hour,
  stripTickets: new Set(['ticket-1']),
  pace: { how: 'by-the-clock', cleanMs: 15 * hour },
  nowMs: startMs,
  notes: [],
  repairs: [],
  gear: [],
  spares: new Map(),
  startOfDate: (date) => Date.parse(`${date}T00:00:00Z`),
  ...changes,
});

/** Levels of one component as [hours after the start, quantity]; null is from the beginning. */
export function levels(
  facts: Partial<YardFacts>,
  component = 'LK',
): readonly (readonly [number | null, number])[] {
  const all = readyLevels(yardOf(facts)).get(component) ?? [];
  return all.map(({ fromMs, quantity }) => [fromMs === null ? null : (fromMs - startMs) / hour, quantity]);
}
