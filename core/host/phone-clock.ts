// When something was counted on a phone whose clock may be wrong. Only the time that passed on it between counting
// and sending is believed, and counted back from the arrival here; what its clock said is kept in words.
import { Temporal } from 'temporal-polyfill';

const minuteMs = 60_000;
const longestMs = 7 * 24 * 60 * minuteMs;

export interface SaidMoments {
  /** By the phone's clock. */
  readonly at: string;
  readonly sentAt: string;
}

export interface CountedMoment {
  /** Never after the arrival. */
  readonly at: string;
  /** What the phone's clock said, where it is more than two minutes off; else null. */
  readonly clockSaid: string | null;
}

/** @param arrival ISO 8601 with offset, by the clock of this machine */
export function countedMoment(arrival: string, said: SaidMoments): CountedMoment {
  const arrivalMs = msOf(arrival);
  const passed = msOf(said.sentAt) - msOf(said.at);
  // Set back or far forward in between, the clock says nothing of how long ago it was.
  const isBelieved = passed >= 0 && passed <= longestMs;
  const offset = /(?:[+-]\d\d:\d\d|Z)$/u.exec(arrival)?.[0] ?? 'Z';
  const at = isBelieved
    ? Temporal.Instant.fromEpochMilliseconds(arrivalMs - passed).toString({
        timeZone: offset === 'Z' ? 'UTC' : offset,
      })
    : arrival;
  const isOff = !isBelieved || Math.abs(msOf(said.sentAt) - arrivalMs) > 2 * minuteMs;
  return { at, clockSaid: isOff ? said.at.slice(0, 16) : null };
}

function msOf(moment: string): number {
  return Temporal.Instant.from(moment).epochMilliseconds;
}
