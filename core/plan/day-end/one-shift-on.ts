// One shift later: an instant goes as far into the next shift as it was into its own, so that a set of 07:00 begins the
// next shift and a pour that was to finish at 14:00 finishes then.
import { nextShiftStart, shiftsBetween } from '../calendar.ts';
import { zoneOf } from '../local-time.ts';
import type { Job } from '../pours.ts';

/** @param at epoch milliseconds */
export function oneShiftOn(at: number, { shifts, timeZone }: Job): number {
  // What ends with a shift belongs to it.
  const own = shiftsBetween(at, at + 1, shifts)[0] ?? shiftsBetween(at - 1, at, shifts)[0];
  if (own === undefined) return sameTimeOnNextDay(at, nextShiftStart(at, shifts), timeZone);
  const next = nextShiftStart(own.to, shifts);
  const end = shiftsBetween(next, next + 1, shifts)[0]?.to ?? next;
  return Math.min(next + (at - own.from), end);
}

/** Outside every shift (a pour at night) the time of day stays and the day is that of the next shift. */
function sameTimeOnNextDay(at: number, next: number, timeZone: string): number {
  const zone = zoneOf(timeZone);
  const day = zone.dayOf(at);
  const moved = zone.wallClockMs(zone.dayOf(next), Math.floor((at - zone.startMs(day)) / 60_000));
  return moved > at ? moved : next;
}
