// Reads the pours of a job: one row a pour, and its sides, gangs, gates, loose pieces and predecessors
// from tables of their own.
import type { Kysely } from 'kysely';
import type { Gate, LooseLine, Pour, PourSide, SettingOrder, SideName } from '../plan/pours.ts';
import type { BookTables, GateRow, LooseLineRow, PourRow } from './tables.ts';

/** In the order in which they were entered; side A before side B. */
export async function readPours(db: Kysely<BookTables>, job: string): Promise<readonly Pour[]> {
  const rows = await db.selectFrom('pour').selectAll().where('job', '=', job).orderBy('position').execute();
  const parts = await readParts(db, job);
  return rows.map((row) => pourOfRow(row, parts));
}

export async function readPourPositions(
  db: Kysely<BookTables>,
  job: string,
): Promise<ReadonlyMap<string, number>> {
  const rows = await db.selectFrom('pour').select(['code', 'position']).where('job', '=', job).execute();
  return new Map(rows.map(({ code, position }) => [code, position]));
}

type Parts = Awaited<ReturnType<typeof readParts>>;

async function readParts(db: Kysely<BookTables>, job: string) {
  const sides = await db.selectFrom('pour_side').selectAll().where('job', '=', job).execute();
  const gangs = await db
    .selectFrom('placed_gang')
    .selectAll()
    .where('job', '=', job)
    .orderBy('position')
    .execute();
  const gates = await db.selectFrom('gate').selectAll().where('job', '=', job).orderBy('position').execute();
  const loose = await db
    .selectFrom('loose_line')
    .selectAll()
    .where('job', '=', job)
    .orderBy('position')
    .execute();
  const after = await db
    .selectFrom('pour_after')
    .selectAll()
    .where('job', '=', job)
    .orderBy('position')
    .execute();
  return {
    sides: Map.groupBy(sides, (row) => sideKey(row.pour, row.side)),
    gangs: Map.groupBy(gangs, (row) => sideKey(row.pour, row.side)),
    gates: Map.groupBy(gates, (row) => row.pour),
    loose: Map.groupBy(loose, (row) => row.pour),
    after: Map.groupBy(after, (row) => row.pour),
  };
}

function sideKey(pour: string, side: string): string {
  return `${side} ${pour}`;
}

function pourOfRow(row: PourRow, parts: Parts): Pour {
  return {
    code: row.code,
    name: row.name,
    element: row.element,
    order: row.setting_order as SettingOrder,
    sides: [sideOf(row, 'A', parts), sideOf(row, 'B', parts)],
    finishAt: row.finish_at,
    stripMinimumH: row.strip_minimum_h,
    stripH: row.strip_h,
    after: (parts.after.get(row.code) ?? []).map((each) => each.earlier_pour),
    gates: (parts.gates.get(row.code) ?? []).map(gateOfRow),
    loose: (parts.loose.get(row.code) ?? []).map(looseOfRow),
    tieComponent: row.tie_component,
  };
}

function sideOf(row: PourRow, side: SideName, parts: Parts): PourSide {
  const key = sideKey(row.code, side);
  const [stored] = parts.sides.get(key) ?? [];
  if (stored === undefined) throw new Error(`Pour ${row.code} of job ${row.job} has no side ${side}.`);
  const gangs = parts.gangs.get(key) ?? [];
  return {
    side,
    setAt: stored.set_at,
    setH: stored.set_h,
    gangs: gangs.map((each) => ({ design: each.design, atNm: each.at_nm })),
  };
}

function gateOfRow(row: GateRow): Gate {
  return {
    name: row.name,
    who: row.who,
    before: row.before_step as Gate['before'],
    promised: row.promised,
    done: row.done === 1,
  };
}

function looseOfRow(row: LooseLineRow): LooseLine {
  return {
    side: row.side as LooseLine['side'],
    component: row.component,
    quantity: row.quantity,
    purpose: row.purpose,
  };
}
