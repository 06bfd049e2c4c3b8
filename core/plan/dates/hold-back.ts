// What keeps a pour from having a date: pours before it, gates by others with their promised dates, the concrete it stands on,
// and that nothing is set before now. A later date can break nothing of it.
import { dayOfDate } from '../days.ts';
import { unitsOfHours } from '../hours.ts';
import { instantText, msOf, zoneOf } from '../local-time.ts';
import { gateNeededBy } from '../pour-findings.ts';
import type { PourTimes } from '../pour-times.ts';
import type { Job, Pour } from '../pours.ts';

/** The first that was found, with the instant until which it lasts. */
export type HoldBack =
  | { readonly kind: 'first-day'; readonly until: number }
  | { readonly kind: 'after'; readonly pour: string; readonly until: number }
  | { readonly kind: 'stands-on'; readonly pour: string; readonly until: number }
  | { readonly kind: 'gate'; readonly name: string; readonly who: string; readonly until: number };

/** The storey below whose concrete carries it, and the hours after which that is strong enough. */
export interface StandsOn {
  readonly pour: string;
  readonly strengthH: number;
}

export interface Around {
  readonly job: Job;
  /** Of all pours that have a date. */
  readonly times: ReadonlyMap<string, PourTimes>;
  readonly standsOn: ReadonlyMap<string, StandsOn>;
  /** Nothing begins before. */
  readonly nowMs: number;
}

export function holdBackOf(
  pour: Pour,
  at: PourTimes,
  { job, times, standsOn, nowMs }: Around,
): HoldBack | null {
  const set = Math.min(...at.sides.map(({ setFrom }) => setFrom));
  const firstDay = Math.max(nowMs, zoneOf(job.timeZone).startMs(dayOfDate(job.planFrom)));
  if (set < firstDay) return { kind: 'first-day', until: firstDay };
  for (const code of pour.after) {
    const before = times.get(code);
    if (before !== undefined && at.finish <= before.finish)
      return { kind: 'after', pour: code, until: before.finish };
  }
  const below = standsOn.get(pour.code);
  const carried = below === undefined ? undefined : times.get(below.pour);
  if (below !== undefined && carried !== undefined) {
    const strong = carried.finish + unitsOfHours(below.strengthH, 1);
    if (set < strong) return { kind: 'stands-on', pour: below.pour, until: strong };
  }
  for (const gate of pour.gates) {
    if (gate.done) continue;
    const promised = zoneOf(job.timeZone).startMs(dayOfDate(gate.promised));
    if (gateNeededBy(at, gate) < promised)
      return { kind: 'gate', name: gate.name, who: gate.who, until: promised };
  }
  return null;
}

/** The finish of a pour on another day, at its own time of day. */
export function finishOn(pour: Pour, day: number, timeZone: string): number {
  const text = instantText(msOf(pour.finishAt), timeZone);
  const minutes = Number(text.slice(11, 13)) * 60 + Number(text.slice(14, 16));
  return zoneOf(timeZone).wallClockMs(day, minutes);
}
