// Places a sequence of pours that have no date yet: orders are searched by the levelling core, each order decoded into days on
// the job's own calendar beside what has a date already. Answers the days, a day before which all cannot be stripped, and why
// no pour stands a day earlier.
import { answer, type Answer } from '../../answer.ts';
import { dateOfDay, dayOfDate } from '../days.ts';
import { checkLevel } from '../level/check-level.ts';
import { levelInput, type LevelInput } from '../level/contract.ts';
import { networkOf } from '../level/network.ts';
import { searchBy } from '../level/search.ts';
import { zoneOf } from '../local-time.ts';
import { pourTimes, type PourTimes } from '../pour-times.ts';
import type { Pour } from '../pours.ts';
import { workingDaysBetween } from '../working-days.ts';
import {
  type CrewWork,
  crewResource,
  type DayGrid,
  dayGrid,
  type HeldPieces,
  workingDaysFrom,
} from './day-grid.ts';
import { type Around, holdBackOf } from './hold-back.ts';
import { type DayOption, type FreePours, type NotBefore, notOn, placeInOrder, take } from './placing.ts';
import { dateOn } from './possible-dates.ts';

export interface PlaceAsk {
  readonly around: Around;
  readonly free: readonly Pour[];
  /** What a pour holds and works at its times. */
  readonly piecesOf: (pour: Pour, times: PourTimes) => readonly HeldPieces[];
  readonly workOf: (pour: Pour, times: PourTimes) => readonly CrewWork[];
  /** All work of the plan of the pours that have a date. */
  readonly workOfDated: readonly CrewWork[];
  readonly levels: ReadonlyMap<string, readonly { readonly fromMs: number; readonly quantity: number }[]>;
  readonly schedules: number;
  readonly seed: number;
}

export interface PlacedPour {
  readonly pour: Pour;
  readonly times: PourTimes;
  /** What keeps it from the working day before; null: it has no day before. */
  readonly notBefore: NotBefore | null;
}

export interface ShortAnyway {
  readonly pour: string;
  readonly component: string;
  readonly needed: number;
  /** The most that is ever left beside the pours with a date. */
  readonly there: number;
}

export interface PlacedPours {
  readonly placed: readonly PlacedPour[];
  /** Those for which no day was found. */
  readonly unplaced: readonly string[];
  /** The date by which all are stripped, and one before which they cannot all be. */
  readonly lastDate: string;
  readonly boundDate: string;
  readonly schedules: number;
  /** Needs that no day can meet: left out of the placing. */
  readonly shortAnyway: readonly ShortAnyway[];
}

/** Refused where pours without a date wait for one another in a circle. */
export function placePours(ask: PlaceAsk): Answer<PlacedPours> {
  const { around, free: pours } = ask;
  const project = projectOf(pours, around);
  const refusal = checkLevel(project);
  if (refusal !== undefined) return { ok: false, error: { ...refusal, field: 'pours' } };
  const grid = gridBeside(ask);
  const shortAnyway = pours.flatMap((pour) => neverThere(ask, grid, pour));
  const network = networkOf(project);
  const optionOf = optionsOf(ask, grid, shortAnyway);
  const free: FreePours = { pours, network, standsOn: around.standsOn, grid, optionOf };
  const bound = Math.max(placedAlone(free), workBound(ask, free, shortAnyway));
  const make = (order: Int32Array, starts: Float64Array): number => placeInOrder(free, order, starts);
  const way = { network, make };
  const { schedules, seed } = ask;
  const found = searchBy({ forward: way, backward: way, first: make }, { schedules, seed, bound });
  const last = grid.days.length - 1;
  const isIn = (at: number): boolean => (found.starts[at] ?? 0) < last;
  const dateAt = (day: number): string => dateOfDay(grid.days[Math.min(Math.max(day, 0), last)] ?? 0);
  return answer({
    placed: withReasons(free, found.starts).filter((_, at) => isIn(at)),
    unplaced: pours.filter((_, at) => !isIn(at)).map(({ code }) => code),
    lastDate: dateAt(found.makespan - 1),
    boundDate: dateAt(bound - 1),
    schedules: found.schedules,
    shortAnyway,
  });
}

/** The order of the pours in the form of the levelling core; what they need is reckoned day by day. */
function projectOf(pours: readonly Pour[], { standsOn }: Around): LevelInput {
  const waitsFor = (pour: Pour): readonly string[] => [...pour.after, standsOn.get(pour.code)?.pour ?? ''];
  return levelInput.parse({
    activities: pours.map(({ code }) => ({
      id: code,
      duration: 1,
      successors: pours.filter((next) => waitsFor(next).includes(code)).map((next) => next.code),
    })),
    capacity: {},
  });
}

/** Long enough for all of them one after another behind everything that has a date. */
function gridBeside({ around, free, workOfDated, levels }: PlaceAsk): DayGrid {
  const { job, nowMs, times } = around;
  const zone = zoneOf(job.timeZone);
  const now = zone.dayOf(nowMs);
  const promised = free.flatMap(({ gates }) =>
    gates.filter(({ done }) => !done).map((gate) => gate.promised),
  );
  const latest = Math.max(
    now,
    ...[...times.values()].map(({ free: at }) => zone.dayOf(at)),
    ...promised.map(dayOfDate),
    ...[...levels.values()].flatMap((list) => list.slice(1)).map(({ fromMs }) => zone.dayOf(fromMs)),
  );
  const spans = free.map((pour) => {
    const own = pourTimes(pour, job);
    return zone.dayOf(own.free) - zone.dayOf(Math.min(...own.sides.map(({ setFrom }) => setFrom))) + 2;
  });
  const count = latest - now + spans.reduce((sum, span) => sum + span, 0) + 10;
  const days = workingDaysFrom(
    job,
    Math.max(nowMs, zone.startMs(dayOfDate(job.planFrom))),
    Math.min(800, count),
  );
  const grid = dayGrid(job, days, levels);
  take(grid, grid.needsOf([], workOfDated), grid.left, 1);
  return grid;
}

/** All pieces of a pour are held together when it is closed; beside the pours with a date there is the most at the end. */
function neverThere({ piecesOf, around }: PlaceAsk, grid: DayGrid, pour: Pour): ShortAnyway[] {
  const sums = new Map<string, number>();
  for (const { component, quantity } of piecesOf(pour, pourTimes(pour, around.job)))
    sums.set(component, (sums.get(component) ?? 0) + quantity);
  return [...sums].flatMap(([component, needed]) => {
    const row = grid.components.indexOf(component) + 1;
    const there = row === 0 ? 0 : (grid.left[(row + 1) * grid.days.length - 1] ?? 0);
    return needed > there ? [{ pour: pour.code, component, needed, there: Math.max(0, there) }] : [];
  });
}

function optionsOf(
  { around, free, piecesOf, workOf }: PlaceAsk,
  grid: DayGrid,
  shortAnyway: readonly ShortAnyway[],
): FreePours['optionOf'] {
  const known = new Map<number, DayOption>();
  const zone = zoneOf(around.job.timeZone);
  const placeOfDay = new Map(grid.days.map((day, at) => [day, at]));
  const isLeftOut = new Set(shortAnyway.map(({ pour, component }) => `${pour} ${component}`));
  const make = (pour: Pour, day: number): DayOption => {
    const date = dateOn(pour, grid.days[day] ?? 0, around);
    const pieces = piecesOf(date.pour, date.times).filter(
      ({ component }) => !isLeftOut.has(`${pour.code} ${component}`),
    );
    return {
      ...date,
      held: holdBackOf(date.pour, date.times, around),
      needs: grid.needsOf(pieces, workOf(date.pour, date.times)),
      firstSet: Math.min(...date.times.sides.map(({ setFrom }) => setFrom)),
      stripDay: placeOfDay.get(zone.dayOf(date.times.stripTo)) ?? grid.days.length,
    };
  };
  return (at, day) => {
    const key = at * grid.days.length + day;
    const before = known.get(key);
    if (before !== undefined) return before;
    const pour = free[at];
    if (pour === undefined) throw new Error(`There is no free pour ${at}`);
    const made = make(pour, day);
    known.set(key, made);
    return made;
  };
}

/** By when all are stripped if pieces and crew were plenty: no placing is shorter. */
function placedAlone(free: FreePours): number {
  const plenty = { ...free.grid, left: new Float64Array(free.grid.left.length).fill(Infinity) };
  const { order } = free.network;
  return placeInOrder({ ...free, grid: plenty }, order, new Float64Array(order.length));
}

/** By when each resource has given as much as all need at the least: from the set day to the day of the finish. */
function workBound(
  { around, free, piecesOf }: PlaceAsk,
  { grid }: FreePours,
  left: readonly ShortAnyway[],
): number {
  const { job } = around;
  const zone = zoneOf(job.timeZone);
  const isLeftOut = new Set(left.map(({ pour, component }) => `${pour} ${component}`));
  const sums = new Float64Array(grid.components.length + 1);
  const shortest = Math.min(...grid.shiftHours);
  for (const pour of free) {
    const times = pourTimes(pour, job);
    // Whoever has more work than a shift holds may have a day to itself, whatever it has.
    const setH = pour.sides.reduce((sum, side) => sum + side.setH, 0);
    if (setH <= shortest) sums[crewResource] = (sums[crewResource] ?? 0) + setH + pour.stripH;
    for (const { component, quantity, from } of piecesOf(pour, times)) {
      const row = grid.components.indexOf(component) + 1;
      if (row === 0 || isLeftOut.has(`${pour.code} ${component}`)) continue;
      const days = workingDaysBetween(zone.dayOf(from), zone.dayOf(times.finish), job.shifts);
      sums[row] = (sums[row] ?? 0) + quantity * Math.max(1, days);
    }
  }
  const { length } = grid.days;
  const bounds = [...sums].map((sum, resource) => {
    let [given, day] = [0, 0];
    for (; given < sum - 1e-6 && day < length; day += 1)
      given += Math.max(0, grid.left[resource * length + day] ?? 0);
    return day;
  });
  return Math.max(0, ...bounds);
}

function withReasons(free: FreePours, starts: Float64Array): PlacedPour[] {
  const { grid, optionOf, pours } = free;
  const left = grid.left.slice();
  const placed = Int32Array.from(starts);
  const needsOf = (at: number) => optionOf(at, placed[at] ?? 0).needs;
  for (const at of pours.keys()) take(grid, needsOf(at), left, 1);
  return pours.map((_, at) => {
    const day = placed[at] ?? 0;
    const { pour, times } = optionOf(at, day);
    take(grid, needsOf(at), left, -1);
    const notBefore = day === 0 ? null : notOn(free, at, day - 1, placed, left);
    take(grid, needsOf(at), left, 1);
    return { pour, times, notBefore };
  });
}
