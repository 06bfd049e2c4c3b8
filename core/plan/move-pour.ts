// Moving a pour by working days: each of its instants goes to the same time of day so many working days
// later or earlier, so that days of work stay days of work. What others promised does not move.
import { instantText, msOf, zoneOf } from './local-time.ts';
import type { Job, Pour, PourSide } from './pours.ts';
import { workedDayFrom, workingDaysBetween } from './working-days.ts';

/** @param workingDays below zero is earlier */
export function movePour(pour: Pour, workingDays: number, job: Job): Pour {
  const move = (instant: string): string => moveInstant(instant, workingDays, job);
  const moveSide = (side: PourSide): PourSide => ({ ...side, setAt: move(side.setAt) });
  return {
    ...pour,
    sides: [moveSide(pour.sides[0]), moveSide(pour.sides[1])],
    finishAt: move(pour.finishAt),
  };
}

/** The pour with another finish: its sides go as many working days with it, at their own times of day. */
export function pourFinishingAt(pour: Pour, finishAt: string, job: Job): Pour {
  const days = zoneOf(job.timeZone);
  const [from, to] = [days.dayOf(msOf(pour.finishAt)), days.dayOf(msOf(finishAt))];
  return { ...movePour(pour, workingDaysBetween(from, to, job.shifts), job), finishAt };
}

/** The pour with other times of the sides named and another finish; nothing else of it moves. */
export function pourAtTimes(
  pour: Pour,
  times: {
    readonly sides: readonly Pick<PourSide, 'side' | 'setAt' | 'setH'>[];
    readonly finishAt: string;
  },
): Pour {
  const timed = (side: PourSide): PourSide => ({
    ...side,
    ...times.sides.find((each) => each.side === side.side),
  });
  return { ...pour, sides: [timed(pour.sides[0]), timed(pour.sides[1])], finishAt: times.finishAt };
}

function moveInstant(instant: string, workingDays: number, job: Job): string {
  if (workingDays === 0) return instant;
  const days = zoneOf(job.timeZone);
  const ms = msOf(instant);
  const from = days.dayOf(ms);
  const to = workedDayFrom(from, workingDays, job.shifts);
  // Most instants are on whole minutes; what is finer is carried over as it is.
  const minutes = wallMinutes(ms, job.timeZone);
  const rest = ms - days.wallClockMs(from, minutes);
  return instantText(days.wallClockMs(to, minutes) + rest, job.timeZone);
}

function wallMinutes(ms: number, timeZone: string): number {
  const text = instantText(ms, timeZone);
  return Number(text.slice(11, 13)) * 60 + Number(text.slice(14, 16));
}
