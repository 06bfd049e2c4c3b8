// What is in care: due back to ready by component and day, what is to clean in the order in which it is cleaned, what is to
// repair, and what is set apart, each since when.
import { z } from 'zod';
import { answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { instantText, localDate } from '../plan/local-time.ts';
import { traceOf } from '../yard/availability.ts';
import { cleaningQueue } from '../yard/cleaning-queue.ts';
import { momentMs } from '../yard/moment.ts';
import { isHeld } from '../yard/movement.ts';
import { draftsOf } from '../yard/promised.ts';
import { sinceWhen } from '../yard/since-when.ts';
import { placeKey } from '../yard/trace.ts';
import { byCode, found } from './by-code.ts';
import { query } from './procedure.ts';
import { code, date, instant } from './shapes.ts';
import { unknownJob } from './unknown.ts';
import { readWorkingJob } from './working-job.ts';
import { type JobYard, readJobYard } from './yard-facts.ts';

const piecesOf = { component: code, name: z.string(), quantity: z.int() };

export const careAnswer = z.strictObject({
  now: instant,
  today: date,
  /** Pieces that are cleaned in a working day; null: each quantity takes the job's clean hours. */
  cleanedPerDay: z.int().nullable(),
  cleanH: z.number(),
  dueBack: z.array(
    z.strictObject({ ...piecesOf, date, at: instant, from: z.enum(['cleaning', 'repair', 'delivery']) }),
  ),
  toClean: z.array(
    z.strictObject({
      ...piecesOf,
      owner: code,
      location: code,
      /** Null: from before the plan, at a time that is not known. */
      since: instant.nullable(),
      /** Null: its time has passed and nobody has booked it clean. */
      due: instant.nullable(),
    }),
  ),
  toRepair: z.array(z.strictObject({ ...piecesOf, owner: code, location: code })),
  quarantine: z.array(
    z.strictObject({
      ...piecesOf,
      owner: code,
      location: code,
      since: instant.nullable(),
      why: z.string().nullable(),
    }),
  ),
});

export const yardCare = query({
  name: 'yard.care',
  input: z.strictObject({ job: code, now: instant.optional() }),
  output: careAnswer,
  run: async (book, { job: jobCode, now }) => {
    const working = await readWorkingJob(book, jobCode);
    if (working === null) return unknownJob(jobCode);
    const { job } = working;
    const [yard, components] = await Promise.all([readJobYard(book, job, now), book.components()]);
    const names = byCode(components);
    const name = (component: string): string => found(names, component).name;
    const text = (ms: number): string => instantText(ms, job.timeZone);
    const parts = cleaningQueue(traceOf(yard).dirty, yard.pace, yard.nowMs);
    const back = [...parts.flatMap(ofCleaning), ...ofRepairs(yard), ...ofDeliveries(yard)];
    return answer({
      now: yard.now,
      today: yard.today,
      cleanedPerDay: yard.settings.cleanedPerDay,
      cleanH: job.cleanH,
      dueBack: joined(back, job.timeZone).map((each) => ({ ...each, name: name(each.component) })),
      toClean: parts.map(({ lot, quantity, dueMs }) => ({
        component: lot.component,
        name: name(lot.component),
        quantity,
        owner: lot.owner,
        location: lot.location,
        since: lot.sinceMs === 0 ? null : text(lot.sinceMs),
        due: dueMs === null ? null : text(dueMs),
      })),
      toRepair: heldIn(yard, 'to-repair').map(({ component, quantity, owner, location }) => ({
        component,
        name: name(component),
        quantity,
        owner,
        location,
      })),
      quarantine: await setApart(book, yard, name, text),
    });
  },
});

interface Back {
  readonly component: string;
  readonly quantity: number;
  readonly atMs: number;
  readonly from: 'cleaning' | 'repair' | 'delivery';
}

function ofCleaning(part: {
  readonly lot: { readonly component: string };
  readonly quantity: number;
  readonly dueMs: number | null;
}): readonly Back[] {
  const { lot, quantity, dueMs } = part;
  return dueMs === null ? [] : [{ component: lot.component, quantity, atMs: dueMs, from: 'cleaning' }];
}

function ofRepairs({ repairs, nowMs }: JobYard): readonly Back[] {
  return repairs.flatMap(({ state, component, quantity, dueAt }): readonly Back[] => {
    const atMs = dueAt === null ? null : momentMs(dueAt);
    if (state !== 'open' || atMs === null || atMs <= nowMs) return [];
    return [{ component, quantity, atMs, from: 'repair' }];
  });
}

function ofDeliveries({ notes, locations, nowMs }: JobYard): readonly Back[] {
  return draftsOf(notes, locations, nowMs).promised.flatMap(({ component, quantity, expectedAt }) => {
    const atMs = expectedAt === null ? null : momentMs(expectedAt);
    return atMs === null ? [] : [{ component, quantity, atMs, from: 'delivery' as const }];
  });
}

/** One line a component, day and way; told at the last moment of that day at which some come. */
function joined(back: readonly Back[], timeZone: string) {
  const groups = Map.groupBy(back, ({ component, atMs, from }) =>
    JSON.stringify([localDate(atMs, timeZone), component, from]),
  );
  return [...groups.values()]
    .flatMap((group) => {
      const [first] = group;
      if (first === undefined) return [];
      const atMs = Math.max(...group.map((each) => each.atMs));
      const quantity = group.reduce((sum, each) => sum + each.quantity, 0);
      return [{ ...first, atMs, quantity }];
    })
    .sort((one, other) => one.atMs - other.atMs || (one.component < other.component ? -1 : 1))
    .map(({ component, quantity, atMs, from }) => ({
      component,
      quantity,
      date: localDate(atMs, timeZone),
      at: instantText(atMs, timeZone),
      from,
    }));
}

function heldIn({ stock, locations }: JobYard, condition: 'to-repair' | 'quarantine') {
  const held = new Set(locations.filter(({ kind }) => isHeld(kind)).map(({ code: place }) => place));
  return stock.filter((line) => line.condition === condition && held.has(line.location));
}

async function setApart(
  book: BookReader,
  yard: JobYard,
  name: (component: string) => string,
  text: (ms: number) => string,
) {
  const lines = heldIn(yard, 'quarantine');
  if (lines.length === 0) return [];
  const period = { afterMs: yard.nowMs - looksBackMs, upToMs: Number.MAX_SAFE_INTEGER };
  const arrived = await book.arrivals('quarantine', period);
  const came = Map.groupBy(
    arrived.filter((each) => each.reversedBy === null && each.reverses === null),
    ({ component, owner, to }) => placeKey(component, owner, to),
  );
  return lines.flatMap((line) => {
    const { component, owner, location } = line;
    const about = { component, name: name(component), owner, location };
    const lots = sinceWhen(line, came.get(placeKey(component, owner, location)) ?? []);
    const told = lots.map(({ quantity, sinceMs, movement }) => ({
      ...about,
      quantity,
      since: text(sinceMs),
      why: movement.remark,
    }));
    const rest = line.quantity - lots.reduce((sum, { quantity }) => sum + quantity, 0);
    return rest > 0 ? [...told, { ...about, quantity: rest, since: null, why: null }] : told;
  });
}

/** What was set apart longer ago than this is told without its day. */
const looksBackMs = 90 * 86_400_000;
