// Repairs, trucks with their loads, and the yard's settings.
import type { Kysely } from 'kysely';
import { type RepairJob, repairText } from '../yard/repair-job.ts';
import { loadText, type Truck, type TruckLoad, truckText } from '../yard/truck.ts';
import { firstYardSettings, type YardSettings, yardSettings } from '../yard/yard-settings.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables } from './tables.ts';

export async function readRepairs(db: Kysely<BookTables>): Promise<readonly RepairJob[]> {
  const rows = await db.selectFrom('repair_job').selectAll().orderBy('id').execute();
  return rows.map((row) => ({
    ...storedJson(repairText, row.repair, `repair ${row.id}`),
    id: row.id,
    state: row.state as RepairJob['state'],
    version: row.version,
  }));
}

export async function putRepair(db: Kysely<BookTables>, command: string, repair: RepairJob): Promise<void> {
  const { id, state, version, ...text } = repair;
  const row = { id, state, version, repair: toStoredJson(repairText, text, `repair ${id}`), command };
  await db
    .insertInto('repair_job')
    .values(row)
    .onConflict((conflict) => conflict.column('id').doUpdateSet(row))
    .execute();
}

export async function readTrucks(db: Kysely<BookTables>): Promise<readonly Truck[]> {
  const rows = await db.selectFrom('truck').selectAll().orderBy('code').execute();
  return rows.map((row) => ({ ...storedJson(truckText, row.truck, `truck ${row.code}`), code: row.code }));
}

export async function putTruck(db: Kysely<BookTables>, truck: Truck): Promise<void> {
  const { code, ...text } = truck;
  const row = { code, truck: toStoredJson(truckText, text, `truck ${code}`) };
  await db
    .insertInto('truck')
    .values(row)
    .onConflict((conflict) => conflict.column('code').doUpdateSet(row))
    .execute();
}

export async function readTruckLoads(db: Kysely<BookTables>): Promise<readonly TruckLoad[]> {
  const rows = await db.selectFrom('truck_load').selectAll().orderBy('id').execute();
  return rows.map((row) => ({
    ...storedJson(loadText, row.truck_load, `load ${row.id}`),
    id: row.id,
    paper: row.paper,
    version: row.version,
  }));
}

export async function putTruckLoad(db: Kysely<BookTables>, command: string, load: TruckLoad): Promise<void> {
  const { id, paper, version, ...text } = load;
  const row = { id, paper, version, truck_load: toStoredJson(loadText, text, `load ${id}`), command };
  await db
    .insertInto('truck_load')
    .values(row)
    .onConflict((conflict) => conflict.column('id').doUpdateSet(row))
    .execute();
}

const name = 'yard';

/** Those that nobody has changed are as the app begins with. */
export async function readYardSettings(db: Kysely<BookTables>): Promise<YardSettings> {
  const row = await db
    .selectFrom('yard_setting')
    .select('setting')
    .where('name', '=', name)
    .executeTakeFirst();
  return row === undefined ? firstYardSettings : storedJson(yardSettings, row.setting, 'the yard settings');
}

export async function putYardSettings(db: Kysely<BookTables>, settings: YardSettings): Promise<void> {
  const row = { name, setting: toStoredJson(yardSettings, settings, 'the yard settings') };
  await db
    .insertInto('yard_setting')
    .values(row)
    .onConflict((conflict) => conflict.column('name').doUpdateSet(row))
    .execute();
}
