// A book with the demo job and two years of a busy yard in it, made by a seed: movements written straight into the
// tables in one transaction, since booking a million of them one command after another would take an hour. The book's
// own check says afterwards whether they could have been booked.
import type { Handle } from '../../core/book/load-sqlite.ts';
import { loadSqlite } from '../../core/book/load-sqlite.ts';
import { yardLedger } from '../../migrations/0003-yard-ledger.ts';
import { makeDemo } from '../../seed-demo/make-demo.ts';
import { numbersFrom } from './jobs.ts';

export interface LedgerSize {
  readonly seed: number;
  readonly movements: number;
}

export const ledgerFrom = Date.UTC(2024, 2, 11, 6);
/** Two weeks into the plan of the demo job. */
export const ledgerTo = Date.UTC(2026, 2, 10, 6);

const perCommand = 25;
const moreComponents = Array.from({ length: 25 }, (_, index) => `X${String(index + 1).padStart(2, '0')}`);
const yards = ['ENN', ...Array.from({ length: 14 }, (_, index) => `RACK-${index + 1}`)];
const standing = [
  'TB',
  ...Array.from({ length: 12 }, (_, index) => `G-${String(index + 1).padStart(2, '0')}`),
  'TB26/P01',
  'TB26/P02',
];
const bins = ['BIN-1', 'BIN-2', 'BIN-3', 'BIN-4'];

interface Shelf {
  readonly place: string;
  readonly condition: string;
  pieces: number;
}

/** Every shelf on which pieces of one component and owner lie. */
interface Holding {
  readonly component: string;
  readonly owner: string;
  readonly shelves: Map<string, Shelf>;
  pieces: number;
}

interface Step {
  readonly reason: string;
  readonly from: readonly string[] | 'supplier';
  readonly to: readonly string[] | 'supplier' | 'same';
  readonly condition: readonly string[];
  readonly after: string | null;
  readonly weight: number;
}

const ready = ['ready', 'ready-hidden'];
const steps: readonly Step[] = [
  { reason: 'issue', from: yards, to: standing, condition: ready, after: null, weight: 30 },
  { reason: 'strip', from: standing, to: yards, condition: ready, after: 'to-clean', weight: 29 },
  { reason: 'clean', from: yards, to: 'same', condition: ['to-clean'], after: 'ready', weight: 24 },
  { reason: 'transfer', from: yards, to: [...yards, ...bins], condition: ready, after: null, weight: 8 },
  { reason: 'transfer', from: bins, to: yards, condition: ready, after: null, weight: 4 },
  {
    reason: 'quarantine',
    from: yards,
    to: 'same',
    condition: ['to-clean'],
    after: 'quarantine',
    weight: 0.5,
  },
  {
    reason: 'repair',
    from: yards,
    to: ['REP'],
    condition: ['to-clean', 'quarantine'],
    after: 'to-repair',
    weight: 1,
  },
  { reason: 'repair', from: ['REP'], to: yards, condition: ['to-repair'], after: 'ready', weight: 1 },
  { reason: 'lost', from: standing, to: ['LOST'], condition: ready, after: null, weight: 0.6 },
  { reason: 'scrap', from: ['REP'], to: ['SCRAP'], condition: ['to-repair'], after: 'scrapped', weight: 0.1 },
  { reason: 'return', from: yards, to: 'supplier', condition: ready, after: null, weight: 0.6 },
];

/** Makes the file; answers what is in it. */
export async function makeLargeLedger(
  file: string,
  size: LedgerSize,
): Promise<{ readonly keys: number; readonly levels: number }> {
  const made = await makeDemo(file, { at: '2026-02-20T16:00:00-05:00', who: 'bench' });
  if (!made.ok) throw new Error(made.error.message);
  const sqlite = await loadSqlite();
  if (!sqlite.ok) throw new Error(sqlite.error.message);
  const handle = sqlite.value(file, {});
  try {
    handle.pragma('journal_mode = WAL');
    handle.pragma('synchronous = OFF');
    handle.exec('BEGIN IMMEDIATE');
    // Indexes and guards are made anew at the end, as the migration makes them.
    const parts = handle
      .prepare<[], { type: string; name: string; sql: string }>(
        "SELECT type, name, sql FROM sqlite_schema WHERE tbl_name = 'movement' AND type <> 'table' AND sql IS NOT NULL",
      )
      .all();
    for (const { type, name } of parts) handle.exec(`DROP ${type} ${name}`);
    putPlaces(handle);
    putMovements(handle, size);
    for (const { sql } of parts) handle.exec(sql);
    putLevels(handle);
    handle.exec('COMMIT');
    handle.pragma('wal_checkpoint(TRUNCATE)');
    return { keys: countOf(handle, 'stock_key'), levels: countOf(handle, 'stock_level') };
  } finally {
    handle.close();
  }
}

function countOf(handle: Handle, table: string): number {
  return Number(handle.prepare(`SELECT count(*) FROM ${table}`).pluck().get());
}

function putPlaces(handle: Handle): void {
  const place = handle.prepare('INSERT OR IGNORE INTO location VALUES (?, ?, ?)');
  for (const code of yards) place.run(code, code, 'rack');
  for (const code of standing) place.run(code, code, code.startsWith('TB26/') ? 'pour' : 'gang');
  for (const code of bins) place.run(code, code, 'container');
  place.run('MHW', 'Another depot', 'supplier');
  handle.prepare("INSERT INTO owner VALUES ('MHW', 'Another supplier', 'supplier', NULL)").run();
  const component = handle.prepare(
    "INSERT INTO component (code, name, kind, weight_grams, regang_per_piece_h, can_shrink) VALUES (?, ?, 'other', 900, 0, 0)",
  );
  for (const code of moreComponents) component.run(code, `Piece ${code}`);
}

function putMovements(handle: Handle, { seed, movements }: LedgerSize): void {
  const next = numbersFrom(seed);
  const holdings = holdingsOf(handle, next);
  const total = steps.reduce((sum, step) => sum + step.weight, 0);
  const stepOf = (): Step => {
    let rest = next() * total;
    return steps.find((step) => (rest -= step.weight) < 0) ?? steps[0]!;
  };
  const insert = handle.prepare(
    `INSERT INTO movement SELECT ?, 'bench-' || ?, ?, ?, ?, ?, ?, ?, ?, ?,
       strftime('%Y-%m-%dT%H:%M:%SZ', ? / 1000, 'unixepoch'), ?, 'bench', ?, NULL, NULL, NULL, NULL, ?,
       strftime('%Y-%m-%dT%H:%M:%SZ', ? / 1000, 'unixepoch'), ?`,
  );
  const command = handle.prepare(
    "INSERT INTO command VALUES (?, ?, 'yard.move', '2026-03-01T07:00:00Z', 'bench', '{}')",
  );
  let number = countOf(handle, 'movement');
  let commands = countOf(handle, 'command');
  const first = number;
  const step = (ledgerTo - ledgerFrom) / movements;
  for (let made = 0; made < movements;) {
    const holding = of(holdings, next);
    const move = holding.pieces < 80 ? delivery(holding, next) : thrown(holding, stepOf(), next);
    if (move === null) continue;
    number += 1;
    if ((number - first - 1) % perCommand === 0) {
      commands += 1;
      command.run(commands, `bench-${commands}`);
    }
    const ms = ledgerFrom + Math.floor((made * step) / 1000) * 1000;
    const { quantity, from, to, condition, after, reason } = move;
    const paper = `paper-${commands}`;
    insert.run(
      number,
      number,
      holding.component,
      quantity,
      holding.owner,
      from,
      to,
      condition,
      after,
      reason,
      ms,
      ms,
      paper,
      paper,
      ms,
      `bench-${commands}`,
    );
    made += 1;
  }
}

function of<T>(list: readonly T[], next: () => number): T {
  return list[Math.floor(next() * list.length)]!;
}

/** All components of ours, every second also of one supplier and every fourth of two. */
function holdingsOf(handle: Handle, next: () => number): readonly Holding[] {
  const codes = handle.prepare<[], { code: string }>('SELECT code FROM component ORDER BY code').all();
  return codes.flatMap(({ code: component }) =>
    ['OURS', 'TFH', 'MHW']
      .filter((_, index) => index === 0 || next() < 0.5 ** index)
      .map((owner) => ({ component, owner, shelves: new Map<string, Shelf>(), pieces: 0 })),
  );
}

interface Move {
  readonly quantity: number;
  readonly from: string;
  readonly to: string;
  readonly condition: string;
  readonly after: string;
  readonly reason: string;
}

const depotOf = (owner: string): string => (owner === 'MHW' ? 'MHW' : 'TFH');

function delivery(holding: Holding, next: () => number): Move {
  const move = { quantity: 40 + Math.floor(next() * 80), from: depotOf(holding.owner), to: of(yards, next) };
  lift(holding, move.to, 'ready', move.quantity);
  holding.pieces += move.quantity;
  return { ...move, condition: 'ready', after: 'ready', reason: 'delivery' };
}

function thrown(holding: Holding, step: Step, next: () => number): Move | null {
  if (step.to === 'supplier' && (holding.owner === 'OURS' || holding.pieces < 200)) return null;
  const fitting = [...holding.shelves.values()].filter(
    ({ place, condition, pieces }) =>
      pieces > 0 && step.condition.includes(condition) && step.from.includes(place),
  );
  if (fitting.length === 0) return null;
  const shelf = of(fitting, next);
  const quantity = 1 + Math.floor(next() * Math.min(shelf.pieces, 12));
  const to =
    step.to === 'same' ? shelf.place : step.to === 'supplier' ? depotOf(holding.owner) : of(step.to, next);
  const after = step.after ?? shelf.condition;
  if (to === shelf.place && after === shelf.condition) return null;
  lift(holding, shelf.place, shelf.condition, -quantity);
  if (to === 'LOST' || to === 'SCRAP' || step.to === 'supplier') holding.pieces -= quantity;
  else lift(holding, to, after, quantity);
  return { quantity, from: shelf.place, to, condition: shelf.condition, after, reason: step.reason };
}

function lift(holding: Holding, place: string, condition: string, pieces: number): void {
  const key = `${place}|${condition}`;
  const shelf = holding.shelves.get(key) ?? { place, condition, pieces: 0 };
  shelf.pieces += pieces;
  holding.shelves.set(key, shelf);
}

/** By the very words with which the migration fills them from an older ledger. */
function putLevels(handle: Handle): void {
  handle.exec('DELETE FROM stock_level; DELETE FROM stock_key;');
  handle.exec(yardLedger.sql.slice(yardLedger.sql.indexOf('INSERT INTO stock_key')));
}
