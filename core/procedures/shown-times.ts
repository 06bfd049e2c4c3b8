// A pour's instants as text in the job's time zone.
import { instantText } from '../plan/local-time.ts';
import type { PourTimes } from '../plan/pour-times.ts';
import type { Job } from '../plan/pours.ts';

export function shownTimes(times: PourTimes, job: Job) {
  const text = (ms: number): string => instantText(ms, job.timeZone);
  return {
    pour: times.pour,
    sides: times.sides.map(({ side, setFrom, setTo }) => ({
      side,
      setFrom: text(setFrom),
      setTo: text(setTo),
    })),
    finishAt: text(times.finish),
    readyAt: text(times.ready),
    stripFrom: text(times.stripFrom),
    stripTo: text(times.stripTo),
    freeAt: text(times.free),
  };
}
