// The work of a plan day by day against what is there: hours of the crew, minutes of the cranes, places on the ground.
import { inShift, nextShiftStart, shiftsBetween } from '../calendar.ts';
import { dayOfDate } from '../days.ts';
import type { RunDescription } from '../describe-runs.ts';
import { unitsOfHours } from '../hours.ts';
import { zoneOf } from '../local-time.ts';
import type { PlanningSettings } from '../planning-settings.ts';
import type { Job } from '../pours.ts';
import type { Work } from '../steps.ts';
import type { TurnsOfPours } from '../turns-from-pours.ts';
import type { Crane } from '../../pick/setup.ts';
import type { CraneBooking } from './crane-booking.ts';
import { type CraneDay, craneDays } from './crane-days.ts';
import { crewHoursByDate, type GangSizes, labourOf, type StepLabour } from './labour.ts';
import { lyingOf } from './lying.ts';
import { type CrewDay, type Overload, overloadsOf } from './overloads.ts';
import { type PadDay, padDays } from './pads.ts';
import { picksOf, straightOn } from './picks.ts';
import { type Reach, reachedPads } from './reach.ts';

export interface WorkFacts {
  readonly job: Job;
  readonly turnsOf: TurnsOfPours;
  readonly runs: readonly RunDescription[];
  readonly work: readonly Work[];
  readonly settings: PlanningSettings;
  readonly bookings: readonly CraneBooking[];
  readonly cranes: readonly Crane[];
  /** Of the pours of which something was entered, by code. */
  readonly pourFacts: ReadonlyMap<
    string,
    { readonly reach: Reach | null; readonly laidDown: boolean | null }
  >;
  readonly sizes: GangSizes;
  /** All dates that are looked at. */
  readonly dates: readonly string[];
}

export interface JobWork {
  readonly labour: readonly StepLabour[];
  readonly crew: readonly CrewDay[];
  /** Empty where no hours of a crane are set. */
  readonly cranes: readonly CraneDay[];
  /** Empty where no pads are set. */
  readonly pads: readonly PadDay[];
  readonly overloads: readonly Overload[];
}

export function workOf(facts: WorkFacts): JobWork {
  const { job, turnsOf, runs, work, settings, pourFacts, dates } = facts;
  const { turns, loose, times } = turnsOf;
  const { timeZone, shifts } = job;
  const labour = labourOf(work, job, settings.labourRates, facts.sizes);
  const needed = crewHoursByDate(labour);
  const crew = dates.map((date) => ({
    date,
    hoursNeeded: needed.get(date) ?? 0,
    hoursThere: shiftHours(date, job) * job.crew,
  }));
  const flownOn = new Map(
    runs.flatMap(({ follows }) =>
      follows.filter(({ kind }) => kind === 'fly-on').map(({ from, to }) => [from, to] as const),
    ),
  );
  const laidDown = (pour: string): boolean => pourFacts.get(pour)?.laidDown ?? settings.laidDown;
  const begun = (at: number): number => (inShift(at, shifts) ? at : nextShiftStart(at, shifts));
  const straight = straightOn(turns, flownOn, laidDown, timeZone);
  const cranes =
    settings.cranes.length === 0
      ? []
      : craneDays(picksOf({ timeZone, turns, loose, times, straight, begun }), dates, {
          hours: settings.cranes,
          bookings: facts.bookings,
          shifts,
          craneOf: (pour) => pourFacts.get(pour)?.reach?.crane ?? null,
        });
  const byId = new Map(turns.map((turn) => [turn.id, turn]));
  const pads =
    settings.pads.length === 0
      ? []
      : padDays(
          lyingOf(runs, byId, straight, unitsOfHours(job.cleanH, 1)),
          reachedPads(settings.pads, facts.cranes),
          dates,
          timeZone,
        );
  return { labour, crew, cranes, pads, overloads: overloadsOf(crew, labour, cranes, pads) };
}

/** Of all shifts that begin on the date: a night belongs to the evening on which it begins. */
export function shiftHours(date: string, { timeZone, shifts }: Pick<Job, 'timeZone' | 'shifts'>): number {
  const zone = zoneOf(timeZone);
  const day = dayOfDate(date);
  const [from, to] = [zone.startMs(day), zone.startMs(day + 1)];
  return shiftsBetween(from, to, shifts)
    .filter((shift) => shift.from >= from)
    .reduce((sum, shift) => sum + (shift.to - shift.from) / 3_600_000, 0);
}
