// Enters, replaces and removes a pour with everything that belongs to it.
import type { Kysely } from 'kysely';
import type { Pour } from '../plan/pours.ts';
import { Refused } from './refused.ts';
import type { BookTables } from './tables.ts';

/** A pour already there keeps its place in the order; a new one goes to the end, or where it is wanted and nothing is. */
export async function putPour(
  db: Kysely<BookTables>,
  job: string,
  pour: Pour,
  wanted?: number,
): Promise<void> {
  const row = {
    job,
    code: pour.code,
    position: await positionOf(db, job, pour.code, wanted),
    name: pour.name,
    element: pour.element,
    setting_order: pour.order,
    finish_at: pour.finishAt,
    strip_minimum_h: pour.stripMinimumH,
    strip_h: pour.stripH,
    tie_component: pour.tieComponent,
  };
  await db
    .insertInto('pour')
    .values(row)
    .onConflict((conflict) => conflict.columns(['job', 'code']).doUpdateSet(row))
    .execute();
  await removeParts(db, job, pour.code);
  await putParts(db, { job, pour: pour.code }, pour);
}

async function positionOf(
  db: Kysely<BookTables>,
  job: string,
  code: string,
  wanted: number | undefined,
): Promise<number> {
  const known = await db
    .selectFrom('pour')
    .select('position')
    .where('job', '=', job)
    .where('code', '=', code)
    .executeTakeFirst();
  if (known !== undefined) return known.position;
  if (wanted !== undefined) {
    const there = await db
      .selectFrom('pour')
      .select('code')
      .where('job', '=', job)
      .where('position', '=', wanted)
      .executeTakeFirst();
    if (there === undefined) return wanted;
  }
  const last = await db
    .selectFrom('pour')
    .select((select) => select.fn.max<number | null>('position').as('position'))
    .where('job', '=', job)
    .executeTakeFirst();
  return (last?.position ?? 0) + 1;
}

async function putParts(
  db: Kysely<BookTables>,
  key: { readonly job: string; readonly pour: string },
  pour: Pour,
): Promise<void> {
  const at = (index: number): { job: string; pour: string; position: number } => ({
    ...key,
    position: index + 1,
  });
  for (const { side, setAt, setH, gangs } of pour.sides) {
    await db
      .insertInto('pour_side')
      .values({ ...key, side, set_at: setAt, set_h: setH })
      .execute();
    const placed = gangs.map((gang, index) => ({
      ...at(index),
      side,
      design: gang.design,
      at_nm: gang.atNm,
    }));
    if (placed.length > 0) await db.insertInto('placed_gang').values(placed).execute();
  }
  const gates = pour.gates.map(({ name, who, before, promised, done }, index) => ({
    ...at(index),
    name,
    who,
    before_step: before,
    promised,
    done: done ? 1 : 0,
  }));
  if (gates.length > 0) await db.insertInto('gate').values(gates).execute();
  const loose = pour.loose.map(({ side, component, quantity, purpose }, index) => ({
    ...at(index),
    side,
    component,
    quantity,
    purpose,
  }));
  if (loose.length > 0) await db.insertInto('loose_line').values(loose).execute();
  const after = pour.after.map((earlier, index) => ({ ...at(index), earlier_pour: earlier }));
  if (after.length > 0) await db.insertInto('pour_after').values(after).execute();
}

async function removeParts(db: Kysely<BookTables>, job: string, pour: string): Promise<void> {
  // Gangs stand on a side, so they go first.
  for (const table of ['placed_gang', 'pour_side', 'gate', 'loose_line', 'pour_after'] as const)
    await db.deleteFrom(table).where('job', '=', job).where('pour', '=', pour).execute();
}

/** Refused where there is none (`unknown-pour`) and where others come after it (`pour-has-followers`). */
export async function removePour(db: Kysely<BookTables>, job: string, code: string): Promise<void> {
  const known = await db
    .selectFrom('pour')
    .select('code')
    .where('job', '=', job)
    .where('code', '=', code)
    .executeTakeFirst();
  if (known === undefined)
    throw new Refused({ code: 'unknown-pour', message: `Job ${job} has no pour ${code}.`, field: 'code' });
  const followers = await db
    .selectFrom('pour_after')
    .select('pour')
    .where('job', '=', job)
    .where('earlier_pour', '=', code)
    .orderBy('pour')
    .execute();
  if (followers.length > 0)
    throw new Refused({
      code: 'pour-has-followers',
      message: `Pour ${code} cannot go: ${followers.map((each) => each.pour).join(', ')} must be poured after it.`,
      field: 'code',
      hint: 'Maybe take it out of their predecessors first.',
    });
  await removeParts(db, job, code);
  await db.deleteFrom('pour').where('job', '=', job).where('code', '=', code).execute();
}
