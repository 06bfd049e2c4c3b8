// Jobs and stored plans in the book.
import type { Kysely } from 'kysely';
import type { Job } from '../plan/pours.ts';
import { shiftsInput } from '../plan/shifts.ts';
import type { StoredPlan } from './book.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables, JobRow } from './tables.ts';

export async function readJobs(db: Kysely<BookTables>): Promise<readonly Job[]> {
  const rows = await db.selectFrom('job').selectAll().orderBy('code').execute();
  return rows.map(jobOfRow);
}

export async function readJob(db: Kysely<BookTables>, code: string): Promise<Job | null> {
  const row = await db.selectFrom('job').selectAll().where('code', '=', code).executeTakeFirst();
  return row === undefined ? null : jobOfRow(row);
}

function jobOfRow(row: JobRow): Job {
  return {
    code: row.code,
    name: row.name,
    timeZone: row.time_zone,
    currency: row.currency,
    units: row.units as Job['units'],
    planFrom: row.plan_from,
    shifts: storedJson(shiftsInput, row.shifts, `shifts of job ${row.code}`),
    crew: row.crew,
    labourPerHCents: row.labour_per_h_cents,
    flyOnH: row.fly_on_h,
    regangBaseH: row.regang_base_h,
    cleanH: row.clean_h,
  };
}

export async function putJob(db: Kysely<BookTables>, job: Job): Promise<void> {
  const row: JobRow = {
    code: job.code,
    name: job.name,
    time_zone: job.timeZone,
    currency: job.currency,
    units: job.units,
    plan_from: job.planFrom,
    shifts: toStoredJson(shiftsInput, job.shifts, `shifts of job ${job.code}`),
    crew: job.crew,
    labour_per_h_cents: job.labourPerHCents,
    fly_on_h: job.flyOnH,
    regang_base_h: job.regangBaseH,
    clean_h: job.cleanH,
  };
  await db
    .insertInto('job')
    .values(row)
    .onConflict((conflict) => conflict.column('code').doUpdateSet(row))
    .execute();
}

/** The plan stored last, whatever moment it says it was made at. */
export async function readLatestPlan(db: Kysely<BookTables>, job: string): Promise<StoredPlan | null> {
  const row = await db
    .selectFrom('stored_plan')
    .selectAll()
    .where('job', '=', job)
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst();
  if (row === undefined) return null;
  const input: unknown = JSON.parse(row.input);
  const answer: unknown = JSON.parse(row.answer);
  return { id: row.id, job: row.job, madeAt: row.made_at, input, answer };
}

export async function putPlan(db: Kysely<BookTables>, plan: StoredPlan): Promise<void> {
  const last = await db
    .selectFrom('stored_plan')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .executeTakeFirst();
  await db
    .insertInto('stored_plan')
    .values({
      number: (last?.number ?? 0) + 1,
      id: plan.id,
      job: plan.job,
      made_at: plan.madeAt,
      input: JSON.stringify(plan.input ?? null),
      answer: JSON.stringify(plan.answer ?? null),
    })
    .execute();
}
