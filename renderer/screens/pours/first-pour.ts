// What a job's very first pour begins with, to be written over: the plan's first day, no gangs yet.
import type { JobClock } from '../../parts/job-clock.ts';
import { readWhen } from '../../parts/when-text.ts';
import type { Pour } from './pour-shapes.ts';

export function firstPour(clock: JobClock): Pour {
  const at = (time: string): string => {
    const read = readWhen(time, clock.planFrom, clock.timeZone);
    return read.ok ? read.value : clock.planFrom;
  };
  return {
    code: 'P01',
    name: 'first pour',
    element: 'wall',
    order: 'face-first',
    sides: [
      { side: 'A', setAt: at('07:00'), setH: 4, gangs: [] },
      { side: 'B', setAt: at('07:00'), setH: 4, gangs: [] },
    ],
    finishAt: at('15:00'),
    stripMinimumH: 24,
    stripH: 4,
    after: [],
    gates: [],
    loose: [],
    tieComponent: null,
  };
}
