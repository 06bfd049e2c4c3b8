// What the dates of a pour follow from, out of a job's facts; and what holds one back as doors show it.
import { never } from '../answer.ts';
import type { Around, HoldBack } from '../plan/dates/hold-back.ts';
import { instantText, msOf } from '../plan/local-time.ts';
import { pourTimes } from '../plan/pour-times.ts';
import type { JobFacts } from './job-facts.ts';

/** @param except the pour whose own date is asked about */
export function aroundOf({ job, pours, planning, source }: JobFacts, except?: string): Around {
  const dated = pours.filter(({ code }) => code !== except);
  return {
    job,
    times: new Map(dated.map((pour) => [pour.code, pourTimes(pour, job)])),
    standsOn: new Map(
      [...planning.pourFacts].flatMap(([code, { standsOn }]) =>
        standsOn === null ? [] : [[code, standsOn]],
      ),
    ),
    nowMs: msOf(source.yard.now),
  };
}

export function shownHoldBack(held: HoldBack, timeZone: string) {
  const until = instantText(held.until, timeZone);
  switch (held.kind) {
    case 'first-day':
      return { kind: held.kind, until };
    case 'after':
    case 'stands-on':
      return { kind: held.kind, pour: held.pour, until };
    case 'gate':
      return { kind: held.kind, name: held.name, who: held.who, until };
    default:
      return never(held);
  }
}
