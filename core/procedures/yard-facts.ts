// Everything of the book that says what the yard has for a job, read at once; deciding comes after (core/yard).
import type { BookReader } from '../book/book.ts';
import { nextShiftStart, shiftsBetween } from '../plan/calendar.ts';
import { unitsOfHours } from '../plan/hours.ts';
import { instantText, localDate, msOf, startOfDate } from '../plan/local-time.ts';
import type { Job } from '../plan/pours.ts';
import type { YardFacts } from '../yard/availability.ts';
import type { CleaningPace, ShiftStretch } from '../yard/cleaning-queue.ts';
import { isInHand, type Location } from '../yard/movement.ts';
import type { StockLine } from '../yard/quantities.ts';
import { sinceWhen } from '../yard/since-when.ts';
import type { StockCount } from '../yard/stock-count.ts';
import type { StripTicket } from '../yard/strip-ticket.ts';
import type { YardSettings } from '../yard/yard-settings.ts';
import { yardNow } from './yard-now.ts';

export interface JobYard extends Omit<YardFacts, 'spares'> {
  readonly settings: YardSettings;
  /** Now by the clock of the job, and its date. */
  readonly now: string;
  readonly today: string;
  readonly startMs: number;
  /** All that is booked, what is booked for days to come as well. */
  readonly stock: readonly StockLine[];
  readonly tickets: readonly StripTicket[];
  readonly counts: readonly StockCount[];
}

/** @param now what the question takes for now; absent: when something was last booked, but not before the plan begins */
export async function readJobYard(book: BookReader, job: Job, now?: string): Promise<JobYard> {
  const startMs = startOfDate(job.planFrom, job.timeZone);
  const startOfPlan = instantText(startMs, job.timeZone);
  const [locations, owners, start, stock, movements, notes, repairs, gear, settings, tickets, counts] =
    await Promise.all([
      book.locations(),
      book.owners(),
      book.stock(startOfPlan),
      book.stock(),
      book.movementsAfter(startOfPlan),
      book.notes({ state: 'draft' }),
      book.repairs(),
      book.liftingGear(),
      book.yardSettings(),
      book.tickets({ state: 'booked' }),
      book.counts({ state: 'booked' }),
    ]);
  const askedMs = msOf(await yardNow(book, now));
  const nowMs = now === undefined ? Math.max(askedMs, startMs) : askedMs;
  const cleanMs = unitsOfHours(job.cleanH, 1);
  return {
    settings,
    nowMs,
    now: instantText(nowMs, job.timeZone),
    today: localDate(nowMs, job.timeZone),
    startMs,
    stock,
    tickets,
    counts,
    start,
    dirtyAtStart: await dirtyAtStart(book, start, locations, startMs),
    movements,
    locations,
    owners,
    cleanMs,
    stripTickets: new Set(tickets.map(({ id }) => id)),
    pace: paceOf(job, cleanMs, settings),
    notes,
    repairs,
    gear,
    startOfDate: (date) => startOfDate(date, job.timeZone),
  };
}

export function paceOf(job: Job, cleanMs: number, { cleanedPerDay }: YardSettings): CleaningPace {
  if (cleanedPerDay === null) return { how: 'by-the-clock', cleanMs };
  const shiftEndingAfter = (ms: number): ShiftStretch => {
    const [here] = shiftsBetween(ms, ms + 1, job.shifts);
    if (here !== undefined) return here;
    const from = nextShiftStart(ms, job.shifts);
    const [next] = shiftsBetween(from, from + 1, job.shifts);
    return next ?? { from, to: from + 1 };
  };
  return { how: 'by-the-day', perDay: cleanedPerDay, shiftEndingAfter };
}

/** Pieces that came longer before than this are cleaned before all others, whichever of them came first. */
const looksBackMs = 14 * 86_400_000;

async function dirtyAtStart(
  book: BookReader,
  start: readonly StockLine[],
  locations: readonly Location[],
  startMs: number,
): Promise<JobYard['dirtyAtStart']> {
  const inHand = new Set(locations.filter(({ kind }) => isInHand(kind)).map(({ code }) => code));
  const dirty = start.filter(({ condition, location }) => condition === 'to-clean' && inHand.has(location));
  if (dirty.length === 0) return [];
  const period = { afterMs: startMs - looksBackMs, upToMs: startMs };
  const came = Map.groupBy(
    (await book.arrivals('to-clean', period)).filter(
      (each) => each.reversedBy === null && each.reverses === null,
    ),
    ({ component, owner, to }) => JSON.stringify([component, owner, to]),
  );
  return dirty.flatMap((line) => {
    const { component, owner, location, quantity } = line;
    const newest = came.get(JSON.stringify([component, owner, location])) ?? [];
    const found = sinceWhen(line, newest).map(({ quantity: some, sinceMs }) => ({
      component,
      owner,
      location,
      quantity: some,
      sinceMs,
    }));
    const rest = quantity - found.reduce((sum, lot) => sum + lot.quantity, 0);
    return rest > 0 ? [...found, { component, owner, location, quantity: rest, sinceMs: longAgo }] : found;
  });
}

const longAgo = 0;
