// The instants of a pour that follow from what was entered. Work counts shift hours, curing counts clock
// hours; strength that is met after the shift means the next shift. All of it is forecast: a named person
// clears the strip.
import { inShift, nextShiftStart, workAfter } from './calendar.ts';
import { unitsOfHours } from './hours.ts';
import { msOf } from './local-time.ts';
import type { Job, Pour, SideName } from './pours.ts';

/** Epoch milliseconds. */
export interface PourTimes {
  readonly pour: string;
  readonly sides: readonly { readonly side: SideName; readonly setFrom: number; readonly setTo: number }[];
  readonly finish: number;
  /** The strip criterion is forecast to be met. */
  readonly ready: number;
  readonly stripFrom: number;
  readonly stripTo: number;
  /** Pieces of this strip that are not flown on are ready again. */
  readonly free: number;
}

/** @param heldUntil until when a hold keeps its set standing, epoch milliseconds; absent where there is none */
export function pourTimes(pour: Pour, job: Job, heldUntil = -Infinity): PourTimes {
  const sides = pour.sides.map((side) => {
    const setFrom = msOf(side.setAt);
    return { side: side.side, setFrom, setTo: workAfter(setFrom, side.setH, job.shifts) };
  });
  const finish = msOf(pour.finishAt);
  const ready = finish + unitsOfHours(pour.stripMinimumH, 1);
  const mayStrip = Math.max(ready, heldUntil);
  const stripFrom = inShift(mayStrip, job.shifts) ? mayStrip : nextShiftStart(mayStrip, job.shifts);
  const stripTo = workAfter(stripFrom, pour.stripH, job.shifts);
  const free = stripTo + unitsOfHours(job.cleanH, 1);
  return { pour: pour.code, sides, finish, ready, stripFrom, stripTo, free };
}

/** The side that is set last: what closes the form. Side B where both begin at once. */
export function closingSide(times: PourTimes): SideName {
  const [a, b] = [setFromOf(times, 'A'), setFromOf(times, 'B')];
  return a > b ? 'A' : 'B';
}

export function setFromOf(times: PourTimes, side: SideName): number {
  const found = times.sides.find((each) => each.side === side);
  if (found === undefined) throw new Error(`Pour ${times.pour} has no side ${side}`);
  return found.setFrom;
}
