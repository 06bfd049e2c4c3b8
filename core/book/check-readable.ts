// Whether everything the book keeps can be read again by its shape, and whether the numbers of its
// commands and movements run without a gap: both only ever grow, so that a gap is a row taken out.
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import type { BookProblem } from './book.ts';
import { readComponents, readRuleVersions } from './catalogue.ts';
import { readDesignRevisions, readDesigns } from './designs.ts';
import { readJobs, readLatestPlan } from './jobs.ts';
import { readMovements } from './ledger.ts';
import { readCranes, readPickSetup } from './picks.ts';
import { readPours } from './pours.ts';
import { sqliteCode } from './refused.ts';
import type { BookTables } from './tables.ts';

export async function checkReadable(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const jobs = await db.selectFrom('job').select('code').orderBy('code').execute();
  const saved = await db
    .selectFrom('design_revision')
    .select('design as code')
    .distinct()
    .orderBy('design')
    .execute();
  const picked = await db.selectFrom('pick_setup').select('design as code').orderBy('design').execute();
  const readings: readonly (readonly [string, () => Promise<unknown>])[] = [
    ['The components', () => readComponents(db)],
    ['The rule tables', () => readRuleVersions(db)],
    ['The designs', () => readDesigns(db)],
    ...saved.map(({ code }): [string, () => Promise<unknown>] => [
      `The saved states of ${code}`,
      () => readDesignRevisions(db, code),
    ]),
    ['The cranes', () => readCranes(db)],
    ...picked.map(({ code }): [string, () => Promise<unknown>] => [
      `The pick of ${code}`,
      () => readPickSetup(db, code),
    ]),
    ['The jobs', () => readJobs(db)],
    ['The newest movement', () => readMovements(db, { limit: 1 })],
    ...jobs.flatMap(({ code }): [string, () => Promise<unknown>][] => [
      [`The pours of ${code}`, () => readPours(db, code)],
      [`The latest plan of ${code}`, () => readLatestPlan(db, code)],
    ]),
  ];
  const problems: BookProblem[] = [];
  for (const [what, read] of readings) {
    try {
      await read();
    } catch (error) {
      if (sqliteCode(error) !== '') throw error;
      const why = error instanceof Error ? error.message.replaceAll(/\s+/gu, ' ').slice(0, 300) : '';
      problems.push({ check: 'integrity', message: `${what} cannot be read: ${why}` });
    }
  }
  return problems;
}

export async function checkNumbers(db: Kysely<BookTables>): Promise<readonly BookProblem[]> {
  const problems: BookProblem[] = [];
  for (const table of ['movement', 'command'] as const) {
    const { rows } = await sql<{ last: number; rows: number }>`
      select coalesce(max(number), 0) as last, count(*) as rows from ${sql.table(table)}
    `.execute(db);
    const [counted] = rows;
    if (counted === undefined) throw new Error(`The rows of ${table} could not be counted.`);
    if (counted.last !== counted.rows)
      problems.push({
        check: table === 'movement' ? 'ledger' : 'integrity',
        message: `The last ${table} has number ${counted.last}, and there are ${counted.rows}: some were taken out.`,
      });
  }
  return problems;
}
