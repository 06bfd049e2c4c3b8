// Labour by step as reports have it: hours of people over contact face, or over gangs where a gang is handled whole.
// Only steps with both times and the number of people count. Unlike steps are never added.
import { never } from '../../answer.ts';
import { areaM2 } from '../../units/area.ts';
import type { ReportedKind } from '../steps.ts';
import { countingReports, type DayReport, type ReportedStep } from './reports.ts';

export type RatedKind = Exclude<ReportedKind, 'pour'>;
/** One square foot is 0.09290304 m2, exact by definition of the foot. */
export const footM2 = 0.09290304;

export interface OwnRate {
  readonly step: RatedKind;
  /** Steps that were reported with times and people. */
  readonly records: number;
  readonly personHours: number;
  readonly areaNm2: bigint;
  readonly gangs: number;
  /** Null where there is no face, or no gang, to divide by. */
  readonly perM2: number | null;
  readonly perFt2: number | null;
  readonly perGang: number | null;
  /** The unit in which the step is usually given. */
  readonly usually: 'face' | 'gang';
}

/** @param ms reads an instant of a report */
export function ownRates(reports: readonly DayReport[], ms: (instant: string) => number): readonly OwnRate[] {
  const timed = countingReports(reports).flatMap(({ entry }) => entry.steps.filter(isTimed));
  const kinds = [...new Set(timed.map(({ kind }) => kind))].filter((kind) => kind !== 'pour');
  return kinds.map((step) =>
    rateOf(
      step,
      timed.filter(({ kind }) => kind === step),
      ms,
    ),
  );
}

type TimedStep = ReportedStep & { readonly from: string; readonly to: string; readonly people: number };

function isTimed(step: ReportedStep): step is TimedStep {
  return step.done && step.from !== null && step.to !== null && step.people !== null && step.people > 0;
}

function rateOf(step: RatedKind, timed: readonly TimedStep[], ms: (instant: string) => number): OwnRate {
  const personHours = timed.reduce(
    (sum, { from, to, people }) => sum + ((ms(to) - ms(from)) / 3_600_000) * people,
    0,
  );
  const areaNm2 = timed.reduce((sum, each) => sum + BigInt(each.areaNm2), 0n);
  const gangs = timed.reduce(
    (sum, { designs }) => sum + designs.reduce((all, each) => all + each.quantity, 0),
    0,
  );
  const face = areaM2(areaNm2);
  return {
    step,
    records: timed.length,
    personHours,
    areaNm2,
    gangs,
    perM2: face === 0 ? null : personHours / face,
    perFt2: face === 0 ? null : (personHours / face) * footM2,
    perGang: gangs === 0 ? null : personHours / gangs,
    usually: usuallyBy(step),
  };
}

function usuallyBy(step: RatedKind): 'face' | 'gang' {
  switch (step) {
    case 'assemble':
    case 'set':
    case 'close':
    case 'strip':
    case 'regang':
      return 'face';
    case 'fly-on':
    case 'break-down':
      return 'gang';
    default:
      return never(step);
  }
}
