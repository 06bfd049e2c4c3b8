// Single changes that could clear an overload, the least first: hours of just as much as is wanting, or a pour that causes
// it moved by a few working days. Whether one does is seen by planning with it.
import { never } from '../../answer.ts';
import { shiftsBetween } from '../calendar.ts';
import { dayOfDate } from '../days.ts';
import { instantText, zoneOf } from '../local-time.ts';
import type { PlanChange } from '../plan-changes.ts';
import type { CraneHours } from '../planning-settings.ts';
import type { Job } from '../pours.ts';
import type { CraneBooking } from './crane-booking.ts';
import type { Overload } from './overloads.ts';
import { freeStretches } from './windows.ts';

/** How far pours are moved, the least first; one day earlier is as much asked as two days later. */
const moves = [1, -1, 2, 3];
/** No more pours than these are tried, those first that cause most. */
const mostPours = 6;
/** A day is lengthened by no more than this. Common practice, no source. */
const mostOvertimeH = 4;

/** @param missing how much more is wanted, where an earlier try was not enough; else what the overload misses */
export function moreHours(
  overload: Overload,
  missing: number,
  job: Job,
  craneHours: readonly CraneHours[],
  bookings: readonly CraneBooking[],
): PlanChange | null {
  switch (overload.kind) {
    case 'crew':
      return overtime(overload.date, missing / job.crew, job);
    case 'crane':
      return longerCrane(overload, missing, job, craneHours, bookings);
    case 'pads':
      return null;
    default:
      return never(overload.kind);
  }
}

/** By all distances of one before those of the next that causes less, the least distance first. */
export function movesOf({ causes }: Overload): readonly PlanChange[] {
  const sums = new Map<string, number>();
  for (const { pour, toPour, amount } of causes) {
    // What is assembled or flown is wanted by where it goes to.
    const by = toPour ?? pour;
    sums.set(by, (sums.get(by) ?? 0) + amount);
    if (toPour !== null && !sums.has(pour)) sums.set(pour, 0);
  }
  const pours = [...sums].sort(([, one], [, other]) => other - one).map(([pour]) => pour);
  return moves.flatMap((workingDays) =>
    pours.slice(0, mostPours).map((pour) => ({ kind: 'move' as const, pour, workingDays })),
  );
}

/** On the end of the day's last shift, in whole quarters of an hour. */
function overtime(date: string, hours: number, job: Job): PlanChange | null {
  const zone = zoneOf(job.timeZone);
  const day = dayOfDate(date);
  const [from, to] = [zone.startMs(day), zone.startMs(day + 1)];
  const last = shiftsBetween(from, to, job.shifts).findLast((shift) => shift.from >= from);
  if (last === undefined || hours > mostOvertimeH) return null;
  const end = last.to + Math.ceil(hours * 4) * 900_000;
  // Past midnight it would be a night, which nobody asks for to clear a day.
  if (end >= to) return null;
  const clock = (ms: number): string => instantText(ms, job.timeZone).slice(11, 16);
  const [start, until] = [clock(last.to), clock(end)];
  return {
    kind: 'calendar',
    exception: { kind: 'extra', date, start, end: until, reason: 'other', remark: null },
  };
}

/** On the end of the crane's last hours of the day. */
function longerCrane(
  { crane, date }: Overload,
  minutes: number,
  job: Job,
  hours: readonly CraneHours[],
  bookings: readonly CraneBooking[],
): PlanChange | null {
  if (crane === null) return null;
  const own = bookings.filter((each) => each.crane === crane);
  const free = freeStretches(
    hours.filter((each) => each.crane === crane),
    own,
    date,
    job.shifts,
  );
  const zone = zoneOf(job.timeZone);
  const day = dayOfDate(date);
  const shift = shiftsBetween(zone.startMs(day), zone.startMs(day + 1), job.shifts).at(-1);
  const from = free.at(-1)?.to ?? shift?.from;
  if (from === undefined || minutes > mostOvertimeH * 60) return null;
  const text = (ms: number): string => instantText(ms, job.timeZone);
  const to = from + Math.ceil(minutes / 15) * 900_000;
  return {
    kind: 'crane',
    booking: {
      crane,
      from: text(from),
      to: text(to),
      kind: 'extra',
      who: '',
      about: 'more minutes for the forms',
    },
  };
}

/** Whether none of the others is worse for it, and none is new. */
export function isCleared(
  id: string,
  before: readonly Overload[],
  after: readonly Overload[],
): { readonly gone: boolean; readonly worse: readonly Overload[] } {
  const was = new Map(before.map((each) => [each.id, each.missing]));
  return {
    gone: after.every((each) => each.id !== id),
    worse: after.filter((each) => each.id !== id && each.missing > (was.get(each.id) ?? 0) + 1e-6),
  };
}
