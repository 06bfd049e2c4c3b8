// The picks of a day laid one after another into the free hours of their crane, each by its earliest time. What does not
// fit before those hours end is left over.
import type { CraneHours } from '../planning-settings.ts';
import type { Shifts } from '../shifts.ts';
import type { CraneBooking } from './crane-booking.ts';
import type { Pick } from './picks.ts';
import { type Free, freeStretches, minutesIn } from './windows.ts';

export interface LaidPick {
  readonly pick: Pick;
  readonly minutes: number;
  /** When it is done, epoch milliseconds; null where it does not fit. */
  readonly at: number | null;
}

/** One crane on one day. */
export interface CraneDay {
  readonly crane: string;
  readonly date: string;
  readonly free: readonly Free[];
  readonly minutesNeeded: number;
  readonly minutesThere: number;
  /** Minutes of the picks that do not fit. */
  readonly minutesOver: number;
  readonly picks: readonly LaidPick[];
}

export interface CraneFacts {
  readonly hours: readonly CraneHours[];
  readonly bookings: readonly CraneBooking[];
  readonly shifts: Shifts;
  /** The crane that serves a pour; null where that is open: the first of the job. */
  readonly craneOf: (pour: string) => string | null;
}

/** @param dates all dates to be looked at, with and without picks */
export function craneDays(
  picks: readonly Pick[],
  dates: readonly string[],
  { hours, bookings, shifts, craneOf }: CraneFacts,
): readonly CraneDay[] {
  const codes = [...new Set(hours.map(({ crane }) => crane))];
  const [first] = codes;
  if (first === undefined) return [];
  const serving = (pour: string): string => {
    const named = craneOf(pour);
    return named !== null && codes.includes(named) ? named : first;
  };
  const byDay = Map.groupBy(picks, ({ date, pour }) => `${date} ${serving(pour)}`);
  const bookedOf = Map.groupBy(bookings, ({ crane }) => crane);
  return codes.flatMap((crane) => {
    const own = hours.filter((each) => each.crane === crane);
    return dates.map((date) => {
      const free = freeStretches(own, bookedOf.get(crane) ?? [], date, shifts);
      return laid(crane, date, free, byDay.get(`${date} ${crane}`) ?? [], minutesPerPick(own));
    });
  });
}

/** Where stretches of one crane differ, the slower figure. */
function minutesPerPick(hours: readonly CraneHours[]): number {
  return Math.max(...hours.map((each) => each.minutesPerPick));
}

function laid(
  crane: string,
  date: string,
  free: readonly Free[],
  picks: readonly Pick[],
  minutes: number,
): CraneDay {
  const left = free.map((each) => ({ ...each }));
  const length = minutes * 60_000;
  const done = picks.map((pick): LaidPick => {
    const stretch = left.find(({ from, to }) => Math.max(from, pick.earliest) + length <= to);
    if (stretch === undefined) return { pick, minutes, at: null };
    const at = Math.max(stretch.from, pick.earliest);
    stretch.from = at + length;
    return { pick, minutes, at };
  });
  return {
    crane,
    date,
    free,
    minutesNeeded: picks.length * minutes,
    minutesThere: minutesIn(free),
    minutesOver: done.filter(({ at }) => at === null).length * minutes,
    picks: done,
  };
}
