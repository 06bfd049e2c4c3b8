// Gangs, containers and lifting gear with their steps and inspections.
import type { Kysely } from 'kysely';
import { type Container, containerStepText, type ContainerStep } from '../yard/container.ts';
import { type Gang, type GangState, type GangStep, gangStepText } from '../yard/gang.ts';
import { type Inspection, inspectionText, type LiftingGear } from '../yard/lifting-gear.ts';
import { msOf } from './ledger.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables } from './tables.ts';

/** Every step, gang by gang, oldest first. */
export async function readGangSteps(db: Kysely<BookTables>, gang?: string): Promise<readonly GangStep[]> {
  let query = db
    .selectFrom('gang_step')
    .leftJoin('command', 'command.id', 'gang_step.command')
    .selectAll('gang_step')
    .select('command.who');
  if (gang !== undefined) query = query.where('gang', '=', gang);
  const rows = await query.orderBy('gang').orderBy('gang_step.number').execute();
  return rows.map((row) => ({
    ...storedJson(gangStepText, row.step, `step ${row.number} of gang ${row.gang}`),
    gang: row.gang,
    number: row.number,
    state: row.state as GangState,
    at: row.at,
    // Inside the command that adds it the name is not in the book yet.
    who: row.who ?? '',
  }));
}

/** As their last steps left them, those broken down too; by tag. */
export async function readGangs(db: Kysely<BookTables>): Promise<readonly Gang[]> {
  const last = new Map((await readGangSteps(db)).map((step) => [step.gang, step]));
  return [...last].map(([code, step]) => ({ code, last: step }));
}

/** The first step of a tag makes the gang; its location has to be there. */
export async function addGangStep(
  db: Kysely<BookTables>,
  command: string,
  added: Omit<GangStep, 'number' | 'who'>,
): Promise<void> {
  const { gang, state, at, ...text } = added;
  await db
    .insertInto('gang')
    .values({ code: gang, command })
    .onConflict((conflict) => conflict.doNothing())
    .execute();
  const last = await db
    .selectFrom('gang_step')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .where('gang', '=', gang)
    .executeTakeFirst();
  const number = (last?.number ?? 0) + 1;
  const step = toStoredJson(gangStepText, text, `step ${number} of gang ${gang}`);
  await db
    .insertInto('gang_step')
    .values({ gang, number, state, at, at_ms: msOf(at), step, command })
    .execute();
}

export async function readContainerSteps(
  db: Kysely<BookTables>,
  container?: string,
): Promise<readonly ContainerStep[]> {
  let query = db
    .selectFrom('container_step')
    .leftJoin('command', 'command.id', 'container_step.command')
    .selectAll('container_step')
    .select('command.who');
  if (container !== undefined) query = query.where('container', '=', container);
  const rows = await query.orderBy('container').orderBy('container_step.number').execute();
  return rows.map((row) => ({
    ...storedJson(containerStepText, row.step, `step ${row.number} of container ${row.container}`),
    container: row.container,
    number: row.number,
    at: row.at,
    // Inside the command that adds it the name is not in the book yet.
    who: row.who ?? '',
  }));
}

/** As their last steps left them; by tag. */
export async function readContainers(db: Kysely<BookTables>): Promise<readonly Container[]> {
  const rows = await db.selectFrom('container').selectAll().orderBy('code').execute();
  const last = new Map((await readContainerSteps(db)).map((step) => [step.container, step]));
  return rows.map(({ code, component, owner }) => {
    const step = last.get(code);
    if (step === undefined) throw new Error(`Container ${code} has no step.`);
    return { code, component, owner, last: step };
  });
}

/** Of a new container, or a further step of one that is there: then component and owner stay as they are. */
export async function addContainerStep(
  db: Kysely<BookTables>,
  command: string,
  container: { readonly code: string; readonly component: string; readonly owner: string },
  added: Omit<ContainerStep, 'number' | 'who' | 'container'>,
): Promise<void> {
  const { code, component, owner } = container;
  const { at, ...text } = added;
  await db
    .insertInto('container')
    .values({ code, component, owner, command })
    .onConflict((conflict) => conflict.doNothing())
    .execute();
  const last = await db
    .selectFrom('container_step')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .where('container', '=', code)
    .executeTakeFirst();
  const number = (last?.number ?? 0) + 1;
  const step = toStoredJson(containerStepText, text, `step ${number} of container ${code}`);
  await db
    .insertInto('container_step')
    .values({ container: code, number, at, at_ms: msOf(at), step, command })
    .execute();
}

/** By serial number. */
export async function readLiftingGear(db: Kysely<BookTables>): Promise<readonly LiftingGear[]> {
  const rows = await db.selectFrom('lifting_gear').selectAll().orderBy('serial').execute();
  const newest = new Map<string, Inspection>();
  for (const each of await readInspections(db)) newest.set(each.serial, each);
  return rows.map(({ serial, component, owner, place }) => ({
    serial,
    component,
    owner,
    place,
    last: newest.get(serial) ?? null,
  }));
}

/** Every inspection, oldest first. */
export async function readInspections(
  db: Kysely<BookTables>,
): Promise<readonly (Inspection & { readonly serial: string })[]> {
  const rows = await db
    .selectFrom('gear_inspection')
    .selectAll()
    .orderBy('serial')
    .orderBy('number')
    .execute();
  return rows.map((row) => ({
    ...storedJson(inspectionText, row.inspection, `inspection ${row.number} of ${row.serial}`),
    number: row.number,
    serial: row.serial,
  }));
}

export async function putLiftingGear(
  db: Kysely<BookTables>,
  command: string,
  gear: Omit<LiftingGear, 'last'>,
): Promise<void> {
  const row = {
    serial: gear.serial,
    component: gear.component,
    owner: gear.owner,
    place: gear.place,
    command,
  };
  await db
    .insertInto('lifting_gear')
    .values(row)
    .onConflict((conflict) => conflict.column('serial').doUpdateSet(row))
    .execute();
}

export async function addInspection(
  db: Kysely<BookTables>,
  command: string,
  serial: string,
  inspection: Omit<Inspection, 'number'>,
): Promise<void> {
  const last = await db
    .selectFrom('gear_inspection')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .where('serial', '=', serial)
    .executeTakeFirst();
  const number = (last?.number ?? 0) + 1;
  const text = toStoredJson(inspectionText, inspection, `inspection ${number} of ${serial}`);
  await db.insertInto('gear_inspection').values({ serial, number, inspection: text, command }).execute();
}
