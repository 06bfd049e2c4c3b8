// Shift arithmetic: how far work reaches back before an instant and on after it when only shift hours
// count. Shifts are kept as one sorted list with the work done before each, so a question is a search.
import { dayShifts } from './day-shifts.ts';
import { zoneDays } from './days.ts';
import { unitsOfHours } from './hours.ts';
import type { Shifts } from './shifts.ts';

export { checkShifts, type Shifts } from './shifts.ts';

/** One shift, from its start up to but not including its end. */
export interface ShiftInterval {
  readonly from: number;
  readonly to: number;
}

/** Instants and durations are in the calendar's unit: milliseconds, unless a scale was asked for. */
export interface Calendar {
  /** The latest instant with `work` of shift time between it and `at`; no work is the instant itself. */
  workBefore(at: number, work: number): number;
  /** The earliest instant with `work` of shift time between `at` and it; no work is the instant itself. */
  workAfter(at: number, work: number): number;
  inShift(at: number): boolean;
  /** The start of the first shift that begins at or after `at`. */
  nextShiftStart(at: number): number;
  /** The shifts that overlap the stretch from `from` to `to`. */
  shiftsBetween(from: number, to: number): readonly ShiftInterval[];
}

/** The scale of a calendar: `units` to the millisecond, counted from `originMs`. */
export interface Scale {
  readonly unitsPerMs: number;
  readonly originMs: number;
}

const milliseconds: Scale = { unitsPerMs: 1, originMs: 0 };

/** Clock time: every hour is an hour of work. */
function clockCalendar(): Calendar {
  return {
    workBefore: (at, work) => at - work,
    workAfter: (at, work) => at + work,
    inShift: () => true,
    nextShiftStart: (at) => at,
    shiftsBetween: (from, to) => [{ from, to }],
  };
}

/** The calendar of the shifts, or of the clock where there are none. The shifts must have passed `checkShifts`. */
export function calendarOf(shifts: Shifts | undefined, scale: Scale = milliseconds): Calendar {
  if (shifts === undefined) return clockCalendar();
  let list = shiftList(shifts, scale, 0, 0);
  const days = zoneDays(shifts.timeZone);
  const reach = (at: number, spareDays: number): ShiftList => {
    const day = days.dayOf(at / scale.unitsPerMs + scale.originMs);
    if (list.firstDay === list.endDay) list = shiftList(shifts, scale, day - 60, day + 120);
    if (day - spareDays < list.firstDay || day + spareDays >= list.endDay) {
      const from = Math.min(list.firstDay, day - 2 * spareDays);
      list = shiftList(shifts, scale, from, Math.max(list.endDay, day + 2 * spareDays));
    }
    return list;
  };
  return {
    workBefore: (at, work) => (work <= 0 ? at : widen((spare) => reachBack(reach(at, spare), at, work))),
    workAfter: (at, work) => (work <= 0 ? at : widen((spare) => reachOn(reach(at, spare), at, work))),
    inShift: (at) => {
      const { starts, ends } = reach(at, 2);
      const index = lastAtOrBefore(starts, at);
      return index >= 0 && at < (ends[index] ?? at);
    },
    nextShiftStart: (at) =>
      widen((spare) => {
        const { starts } = reach(at, spare);
        return starts[lastBefore(starts, at) + 1];
      }),
    shiftsBetween: (from, to) => {
      reach(from, 2);
      const { starts, ends } = reach(to, 2);
      const found: ShiftInterval[] = [];
      for (let index = Math.max(0, lastAtOrBefore(starts, from)); index < starts.length; index += 1) {
        const start = starts[index] ?? to;
        const end = ends[index] ?? start;
        if (start >= to) break;
        if (end > from) found.push({ from: start, to: end });
      }
      return found;
    },
  };
}

/** The latest instant (epoch milliseconds) with that many shift hours between it and `instantMs`. */
export function workBefore(instantMs: number, hours: number, shifts?: Shifts): number {
  return remembered(shifts).workBefore(instantMs, unitsOfHours(hours, 1));
}

/** The earliest instant (epoch milliseconds) with that many shift hours between `instantMs` and it. */
export function workAfter(instantMs: number, hours: number, shifts?: Shifts): number {
  return remembered(shifts).workAfter(instantMs, unitsOfHours(hours, 1));
}

/** Whether the instant lies in a shift; the end of a shift no longer does. */
export function inShift(instantMs: number, shifts?: Shifts): boolean {
  return remembered(shifts).inShift(instantMs);
}

/** The start of the first shift that begins at or after the instant; without shifts the instant itself. */
export function nextShiftStart(instantMs: number, shifts?: Shifts): number {
  return remembered(shifts).nextShiftStart(instantMs);
}

/** The shifts that overlap the stretch, in order. */
export function shiftsBetween(fromMs: number, toMs: number, shifts: Shifts): readonly ShiftInterval[] {
  return remembered(shifts).shiftsBetween(fromMs, toMs);
}

interface ShiftList {
  readonly firstDay: number;
  readonly endDay: number;
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  /** Work of all shifts of the list before this one. */
  readonly before: readonly number[];
}

const calendars = new WeakMap<Shifts, Calendar>();
const clock = clockCalendar();

function remembered(shifts: Shifts | undefined): Calendar {
  if (shifts === undefined) return clock;
  const known = calendars.get(shifts);
  if (known !== undefined) return known;
  const made = calendarOf(shifts);
  calendars.set(shifts, made);
  return made;
}

function shiftList(shifts: Shifts, scale: Scale, firstDay: number, endDay: number): ShiftList {
  const starts: number[] = [];
  const ends: number[] = [];
  const before: number[] = [];
  let work = 0;
  for (const { from, to } of dayShifts(shifts, firstDay, endDay)) {
    const start = (from - scale.originMs) * scale.unitsPerMs;
    const end = (to - scale.originMs) * scale.unitsPerMs;
    starts.push(start);
    ends.push(end);
    before.push(work);
    work += end - start;
  }
  return { firstDay, endDay, starts, ends, before };
}

/** Asks again with more days on both sides until there is an answer. */
function widen(ask: (spareDays: number) => number | undefined): number {
  for (let spareDays = 14; spareDays < 200_000; spareDays *= 2) {
    const found = ask(spareDays);
    if (found !== undefined) return found;
  }
  throw new RangeError('Work reaches further than five hundred years by this calendar.');
}

function reachOn(list: ShiftList, at: number, work: number): number | undefined {
  const index = lastAtOrBefore(list.starts, at);
  const done = index < 0 ? 0 : workUpTo(list, index, at);
  const goal = done + work;
  // The first shift by whose end the goal is met.
  const last = lastBefore(list.before, goal);
  const start = list.starts[last];
  const end = list.ends[last];
  const before = list.before[last];
  if (start === undefined || end === undefined || before === undefined) return undefined;
  return goal - before <= end - start ? start + (goal - before) : undefined;
}

function reachBack(list: ShiftList, at: number, work: number): number | undefined {
  const index = lastAtOrBefore(list.starts, at);
  if (index < 0) return undefined;
  const goal = workUpTo(list, index, at) - work;
  if (goal < 0) return undefined;
  // The last shift with work still to be done after the goal.
  const shift = lastAtOrBefore(list.before, goal);
  const start = list.starts[shift];
  const before = list.before[shift];
  return start === undefined || before === undefined ? undefined : start + (goal - before);
}

function workUpTo(list: ShiftList, index: number, at: number): number {
  const start = list.starts[index] ?? at;
  return (list.before[index] ?? 0) + Math.min(at, list.ends[index] ?? at) - start;
}

/** The index of the last entry not above `value` in a rising list, -1 where there is none. */
function lastAtOrBefore(rising: readonly number[], value: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? Infinity) <= value) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** The index of the last entry below `value`, -1 where there is none. */
function lastBefore(rising: readonly number[], value: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? Infinity) < value) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
