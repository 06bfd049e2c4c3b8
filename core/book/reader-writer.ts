// The reader and the writer that procedures are handed: the repositories, bound to one transaction.
import type { Kysely } from 'kysely';
import { allMigrations } from '../../migrations/all.ts';
import { appendMovements } from './append-movements.ts';
import type { BookReader, BookWriter } from './book.ts';
import { putComponent, putRules, readComponents, readRuleVersions } from './catalogue.ts';
import { checkBook } from './check-book.ts';
import { putDesign, readDesignRevisions, readDesigns, removeDesign } from './designs.ts';
import { readHistory } from './history.ts';
import { putJobEntry, readJobEntries, removeJobEntry } from './job-entries.ts';
import { putJob, putPlan, readJob, readJobs, readLatestPlan } from './jobs.ts';
import { msOf, readArrivals, readMovement, readMovements, readMovementsFrom } from './ledger.ts';
import type { Migration } from './migration.ts';
import { readPaperNames } from './paper-names.ts';
import { putCrane, putPickSetup, readCranes, readPickSetup } from './picks.ts';
import { putLocation, putOwner, readLocations, readOwners } from './places.ts';
import { readPourPositions, readPours } from './pours.ts';
import { putPour, removePour } from './put-pour.ts';
import { readStock } from './stock.ts';
import type { BookTables } from './tables.ts';
import { yardReaderOf, yardWriterOf } from './yard-reader-writer.ts';

/** @param migrations those that made the book: what `check` holds its tables against */
export function readerOf(
  db: Kysely<BookTables>,
  migrations: readonly Migration[] = allMigrations,
): BookReader {
  return {
    ...yardReaderOf(db),
    changeNumber: () => readChangeNumber(db),
    components: () => readComponents(db),
    ruleVersions: () => readRuleVersions(db),
    locations: () => readLocations(db),
    owners: () => readOwners(db),
    designs: () => readDesigns(db),
    designRevisions: (design) => readDesignRevisions(db, design),
    cranes: () => readCranes(db),
    pickSetup: (design) => readPickSetup(db, design),
    jobs: () => readJobs(db),
    job: (code) => readJob(db, code),
    pours: (job) => readPours(db, job),
    pourPositions: (job) => readPourPositions(db, job),
    jobEntries: (job, kind) => readJobEntries(db, job, kind),
    stock: (at, only) => readStock(db, at === undefined ? undefined : msOf(at), only),
    movementsAfter: (at) => readMovementsFrom(db, msOf(at) + 1),
    arrivals: (condition, period) => readArrivals(db, condition, period),
    movements: (filter) => readMovements(db, filter),
    history: (filter) => readHistory(db, filter),
    movement: (id) => readMovement(db, id),
    paperNames: (ids) => readPaperNames(db, ids),
    latestPlan: (job) => readLatestPlan(db, job),
    check: () => checkBook(db, migrations),
  };
}

/** @param commandId the command whose transaction this is: every movement names it */
export function writerOf(db: Kysely<BookTables>, commandId: string): BookWriter {
  return {
    ...readerOf(db),
    ...yardWriterOf(db, commandId),
    putComponent: (component) => putComponent(db, component),
    putRules: (system, systemName, rules) => putRules(db, system, systemName, rules),
    putLocation: (location) => putLocation(db, location),
    putOwner: (owner) => putOwner(db, owner),
    putDesign: (design) => putDesign(db, commandId, design),
    removeDesign: (code) => removeDesign(db, code),
    putCrane: (crane) => putCrane(db, crane),
    putPickSetup: (design, setup) => putPickSetup(db, design, setup),
    putJob: (job) => putJob(db, job),
    putPour: (job, pour, position) => putPour(db, job, pour, position),
    removePour: (job, code) => removePour(db, job, code),
    putJobEntry: (of, entry) => putJobEntry(db, commandId, of, entry),
    removeJobEntry: (of) => removeJobEntry(db, of),
    appendMovements: (movements, recordedAt) => appendMovements(db, commandId, movements, recordedAt),
    putPlan: (plan) => putPlan(db, plan),
  };
}

/** Commands are numbered as they commit. */
export async function readChangeNumber(db: Kysely<BookTables>): Promise<number> {
  const last = await db
    .selectFrom('command')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .executeTakeFirst();
  return last?.number ?? 0;
}
