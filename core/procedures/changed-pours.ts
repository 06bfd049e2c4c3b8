// Pours that stand at other times in one plan than in the other, or only in one of them: when they are set, finished and
// stripped, and the first shift in which their pieces are free.
import { z } from 'zod';
import { inShift, nextShiftStart } from '../plan/calendar.ts';
import { instantText } from '../plan/local-time.ts';
import type { PourTimes } from '../plan/pour-times.ts';
import { found } from './by-code.ts';
import type { JobPlan } from './job-plan.ts';
import { code, instant } from './shapes.ts';

const times = z.strictObject({
  setFrom: instant,
  finishAt: instant,
  stripFrom: instant,
  freeAt: instant,
  /** When work with its pieces can begin: at once within a shift, else with the next one. */
  freeShift: instant,
});

export const changedPour = z.strictObject({
  pour: code,
  name: z.string(),
  /** Null where it has no date, or is not there. */
  before: times.nullable(),
  after: times.nullable(),
});

export function changedPours(before: JobPlan, after: JobPlan): z.input<typeof changedPour>[] {
  const [was, is] = [timesOf(before), timesOf(after)];
  const names = new Map(
    [...before.facts.source.pours, ...after.facts.source.pours].map((pour) => [pour.code, pour.name]),
  );
  return [...names.keys()]
    .map((pour) => ({
      pour,
      name: found(names, pour),
      before: was.get(pour) ?? null,
      after: is.get(pour) ?? null,
    }))
    .filter((each) => JSON.stringify(each.before) !== JSON.stringify(each.after));
}

function timesOf(plan: JobPlan): ReadonlyMap<string, z.input<typeof times>> {
  return new Map([...plan.turnsOf.times].map(([pour, each]) => [pour, shown(each, plan)]));
}

function shown({ sides, finish, stripFrom, free }: PourTimes, { facts: { job } }: JobPlan) {
  const text = (ms: number): string => instantText(ms, job.timeZone);
  return {
    setFrom: text(Math.min(...sides.map(({ setFrom }) => setFrom))),
    finishAt: text(finish),
    stripFrom: text(stripFrom),
    freeAt: text(free),
    freeShift: text(inShift(free, job.shifts) ? free : nextShiftStart(free, job.shifts)),
  };
}
