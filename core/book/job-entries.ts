// What a job keeps around its plan: one row an entry, its text read and written by the shape of its kind.
import type { Kysely } from 'kysely';
import { type JobEntry, type JobEntryKind, jobEntryShapes, type KeptEntry } from '../plan/job-entries.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables } from './tables.ts';

/** In the order in which they were first entered. */
export async function readJobEntries<Kind extends JobEntryKind>(
  db: Kysely<BookTables>,
  job: string,
  kind: Kind,
): Promise<readonly KeptEntry<Kind>[]> {
  const rows = await db
    .selectFrom('job_entry')
    .leftJoin('command', 'command.id', 'job_entry.command')
    .select(['job_entry.id', 'job_entry.number', 'job_entry.entry', 'command.at', 'command.who'])
    .where('job_entry.job', '=', job)
    .where('job_entry.kind', '=', kind)
    .orderBy('job_entry.number')
    .execute();
  return rows.map(({ id, number, entry, at, who }) => ({
    id,
    number,
    entered: at === null || who === null ? null : { at, who },
    // The compiler does not see that the shape of a kind makes the entry of that kind.
    entry: storedJson(jobEntryShapes[kind], entry, `${kind} ${id} of job ${job}`) as JobEntry<Kind>,
  }));
}

/** One that is there keeps its place in the order. */
export async function putJobEntry<Kind extends JobEntryKind>(
  db: Kysely<BookTables>,
  command: string,
  of: { readonly job: string; readonly kind: Kind; readonly id: string },
  entry: JobEntry<Kind>,
): Promise<void> {
  const last = await db
    .selectFrom('job_entry')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .executeTakeFirst();
  const text = toStoredJson(
    jobEntryShapes[of.kind],
    entry as JobEntry<JobEntryKind> as never,
    `${of.kind} ${of.id} of job ${of.job}`,
  );
  await db
    .insertInto('job_entry')
    .values({ ...of, number: (last?.number ?? 0) + 1, entry: text, command })
    .onConflict((conflict) => conflict.columns(['job', 'kind', 'id']).doUpdateSet({ entry: text, command }))
    .execute();
}

export async function removeJobEntry(
  db: Kysely<BookTables>,
  of: { readonly job: string; readonly kind: JobEntryKind; readonly id: string },
): Promise<void> {
  await db
    .deleteFrom('job_entry')
    .where('job', '=', of.job)
    .where('kind', '=', of.kind)
    .where('id', '=', of.id)
    .execute();
}
