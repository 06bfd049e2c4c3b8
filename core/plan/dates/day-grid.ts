// What is left on each working day of the crew's hours and of every component, while pours are put in. Days are whole: a
// component that stands at a pour for an hour of a day is held for that day.
import { calendarOf } from '../calendar.ts';
import { zoneOf } from '../local-time.ts';
import type { Job } from '../pours.ts';
import { workedDayFrom, workedDays } from '../working-days.ts';
import type { Level } from './left-over.ts';

export interface HeldPieces {
  readonly component: string;
  readonly quantity: number;
  readonly from: number;
  readonly to: number;
}

/** A stretch of work of the whole crew, in epoch milliseconds. */
export interface CrewWork {
  readonly from: number;
  readonly to: number;
}

export interface DayNeeds {
  /** Of the resource, on the day (both by place). */
  readonly rows: readonly { readonly resource: number; readonly day: number; readonly amount: number }[];
}

/** The resource of the crew stands first. */
export const crewResource = 0;

export interface DayGrid {
  readonly days: readonly number[];
  readonly components: readonly string[];
  /** By resource and day: `left[resource * days.length + day]`. */
  readonly left: Float64Array;
  readonly shiftHours: readonly number[];
  readonly needsOf: (pieces: readonly HeldPieces[], work: readonly CrewWork[]) => DayNeeds;
}

const hourMs = 3_600_000;

export function workingDaysFrom(job: Job, fromMs: number, count: number): number[] {
  const first = zoneOf(job.timeZone).dayOf(fromMs);
  const days = [workedDays(job.shifts)(first) ? first : workedDayFrom(first, 1, job.shifts)];
  while (days.length < count) days.push(workedDayFrom(days.at(-1) ?? first, 1, job.shifts));
  return days;
}

/** @param levels what is left of each component over time; the first from the beginning */
export function dayGrid(
  job: Job,
  days: readonly number[],
  levels: ReadonlyMap<string, readonly Level[]>,
): DayGrid {
  const zone = zoneOf(job.timeZone);
  const calendar = calendarOf(job.shifts);
  const starts = days.map((day) => zone.startMs(day));
  const ends = days.map((day) => zone.startMs(day + 1));
  const shiftHours = days.map((_, at) => hoursBetween(starts[at] ?? 0, ends[at] ?? 0));
  const components = [...levels.keys()].sort();
  const place = new Map(components.map((component, index) => [component, index + 1]));
  const left = new Float64Array((components.length + 1) * days.length);
  left.set(shiftHours, 0);
  for (const [component, list] of levels)
    for (const at of days.keys())
      left[(place.get(component) ?? 0) * days.length + at] = leastLevel(list, starts[at] ?? 0, ends[at] ?? 0);

  function hoursBetween(from: number, to: number): number {
    const shifts = calendar.shiftsBetween(from, to);
    return shifts.reduce(
      (sum, each) => sum + (Math.min(each.to, to) - Math.max(each.from, from)) / hourMs,
      0,
    );
  }
  const overlapped = (from: number, to: number): number[] => {
    const found: number[] = [];
    for (const at of days.keys()) if ((starts[at] ?? 0) < to && (ends[at] ?? 0) > from) found.push(at);
    return found;
  };
  const needsOf: DayGrid['needsOf'] = (pieces, work) => {
    const sums = new Map<number, number>();
    const add = (resource: number, day: number, amount: number): void => {
      const cell = resource * days.length + day;
      sums.set(cell, (sums.get(cell) ?? 0) + amount);
    };
    for (const { component, quantity, from, to } of pieces) {
      const resource = place.get(component);
      if (resource !== undefined) for (const day of overlapped(from, to)) add(resource, day, quantity);
    }
    for (const { from, to } of work)
      for (const day of overlapped(from, to))
        add(crewResource, day, hoursBetween(Math.max(from, starts[day] ?? 0), Math.min(to, ends[day] ?? 0)));
    const rows = [...sums].map(([cell, amount]) => ({
      resource: Math.floor(cell / days.length),
      day: cell % days.length,
      amount,
    }));
    return { rows: rows.filter(({ amount }) => amount > 0) };
  };
  return { days, components, left, shiftHours, needsOf };
}

function leastLevel(levels: readonly Level[], from: number, to: number): number {
  let least = Infinity;
  let before = 0;
  for (const { fromMs, quantity } of levels)
    if (fromMs <= from) before = quantity;
    else if (fromMs < to) least = Math.min(least, quantity);
  return Math.min(least, before);
}
