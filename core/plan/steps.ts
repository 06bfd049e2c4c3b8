// What happens on each day: setting, closing, pouring, stripping, and what the plan does with every gang
// before and after. Work that runs over several shifts has a step in each, with the hours that fall there.
import { shiftsBetween } from './calendar.ts';
import { localDate } from './local-time.ts';
import type { Job } from './pours.ts';

export const stepKinds = [
  'assemble',
  'set',
  'close',
  'pour',
  'ready',
  'strip',
  'fly-on',
  'regang',
  'break-down',
] as const;
export type StepKind = (typeof stepKinds)[number];

/** Those that people do, and can therefore report: that strength is met is a forecast. */
export const reportedKinds = [
  'assemble',
  'set',
  'close',
  'pour',
  'strip',
  'fly-on',
  'regang',
  'break-down',
] as const satisfies readonly StepKind[];
export type ReportedKind = (typeof reportedKinds)[number];

/** A stretch of work of one kind, or (where `from` is `to`) a moment such as the finish of a pour. */
export interface Work {
  readonly kind: StepKind;
  /** Epoch milliseconds. */
  readonly from: number;
  readonly to: number;
  /** The pour that it is for; of a follow, the pour that the gang leaves. */
  readonly pour: string;
  /** Of a follow, the pour that the gang goes to. */
  readonly toPour: string | null;
  readonly designs: readonly string[];
  readonly turns: readonly string[];
}

export interface Step {
  /** Local date, YYYY-MM-DD. */
  readonly date: string;
  readonly kind: StepKind;
  readonly from: number;
  readonly to: number;
  readonly pour: string;
  readonly toPour: string | null;
  readonly designs: readonly { readonly design: string; readonly quantity: number }[];
  /** Hours of work in this day's shift, of one crew working together. */
  readonly hours: number;
  readonly turns: readonly string[];
}

const hourMs = 3_600_000;

/** The steps in order of day and time; like work of one pour on one day is one step. */
export function stepsOf(work: readonly Work[], job: Job): Step[] {
  const parts = work.flatMap((each) => partsByDay(each, job));
  const joined = new Map<string, Part[]>();
  for (const part of parts) {
    const key = JSON.stringify([part.date, part.kind, part.pour, part.toPour]);
    joined.set(key, [...(joined.get(key) ?? []), part]);
  }
  const steps = [...joined.values()].map(joinParts);
  return steps.sort(
    (one, other) =>
      compare(one.date, other.date) ||
      one.from - other.from ||
      stepKinds.indexOf(one.kind) - stepKinds.indexOf(other.kind) ||
      compare(one.pour, other.pour),
  );
}

/** Hours of work on each date that has any, of one crew working together. */
export function hoursByDate(steps: readonly Step[]): Map<string, number> {
  const hours = new Map<string, number>();
  for (const step of steps) hours.set(step.date, (hours.get(step.date) ?? 0) + step.hours);
  return hours;
}

export interface Part extends Work {
  readonly date: string;
}

/** Work outside every shift (a pour at night, an instant) stays on the day it falls on. */
export function partsByDay(work: Work, job: Job): Part[] {
  if (work.from === work.to) return [{ ...work, date: localDate(work.from, job.timeZone) }];
  return shiftsBetween(work.from, work.to, job.shifts).map((shift) => {
    const from = Math.max(shift.from, work.from);
    // What is done after midnight belongs to the shift that began the evening before.
    const date = localDate(shift.from, job.timeZone);
    return { ...work, from, to: Math.min(shift.to, work.to), date };
  });
}

function joinParts(parts: readonly Part[]): Step {
  const [first] = parts;
  if (first === undefined) throw new Error('A step of no work');
  const designs = new Map<string, number>();
  for (const design of parts.flatMap((part) => part.designs))
    designs.set(design, (designs.get(design) ?? 0) + 1);
  return {
    date: first.date,
    kind: first.kind,
    from: Math.min(...parts.map((part) => part.from)),
    to: Math.max(...parts.map((part) => part.to)),
    pour: first.pour,
    toPour: first.toPour,
    designs: [...designs].map(([design, quantity]) => ({ design, quantity })),
    hours: parts.reduce((sum, part) => sum + (part.to - part.from) / hourMs, 0),
    turns: [...new Set(parts.flatMap((part) => part.turns))],
  };
}

function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
