// Hours of people for every step of a plan. Where a rate is set for the step they are its area, gangs or pieces by that
// rate, spread over the days on which the step is worked; where none is, the hours entered by the whole crew.
import { never } from '../../answer.ts';
import { ratioNumber } from '../../units/exact.ts';
import { localDate } from '../local-time.ts';
import type { LabourRate } from '../planning-settings.ts';
import type { Job } from '../pours.ts';
import { partsByDay, type Work } from '../steps.ts';

export type LabourStep = LabourRate['step'];

/** What a rate is multiplied with. */
export interface GangSizes {
  readonly areaNm2: (design: string) => bigint;
  readonly pieces: (design: string) => Readonly<Record<string, number>>;
  readonly designOf: (turn: string) => string;
}

/** One step on one day. */
export interface StepLabour {
  readonly date: string;
  readonly step: LabourStep;
  readonly pour: string;
  readonly toPour: string | null;
  readonly turns: readonly string[];
  readonly personHours: number;
  /** Whose rate it is; null where the hours were entered. */
  readonly rate: LabourRate | null;
}

export function labourOf(
  work: readonly Work[],
  job: Job,
  rates: readonly LabourRate[],
  sizes: GangSizes,
): readonly StepLabour[] {
  const rateOf = new Map(rates.map((rate) => [rate.step, rate]));
  return work.flatMap((each): readonly StepLabour[] => {
    const step = stepOf(each.kind);
    if (step === null) return [];
    const own = labourOfWork(each, step, rateOf.get(step) ?? null, job, sizes);
    const clean = each.kind === 'strip' ? (rateOf.get('clean') ?? null) : null;
    if (clean === null) return own;
    // What is stripped is cleaned: on the day on which its strip ends.
    const { pour, toPour, turns } = each;
    const date = own.at(-1)?.date ?? localDate(each.to, job.timeZone);
    const personHours = ratedHours(clean, each, sizes);
    return [...own, { date, step: 'clean', pour, toPour, turns, personHours, rate: clean }];
  });
}

/** Hours of people needed on each date that has any. */
export function crewHoursByDate(labour: readonly StepLabour[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { date, personHours } of labour) sums.set(date, (sums.get(date) ?? 0) + personHours);
  return sums;
}

/** Hours of people by a rate: contact area of the gangs, their number, or their pieces. */
export function ratedHours(
  { unit, personHours }: LabourRate,
  work: Pick<Work, 'kind' | 'designs' | 'turns'>,
  sizes: GangSizes,
): number {
  switch (unit) {
    case 'h/m2':
      return personHours * ratioNumber(areaOf(work.designs, sizes), 10n ** 18n);
    case 'h/ft2':
      // 1 sq ft is 0.09290304 m2, exact by definition of the foot.
      return personHours * ratioNumber(areaOf(work.designs, sizes), 92_903_040_000_000_000n);
    case 'h/gang':
      return personHours * work.designs.length;
    case 'h/piece':
      return personHours * piecesOf(work, sizes);
    default:
      return never(unit);
  }
}

function labourOfWork(
  work: Work,
  step: LabourStep,
  rate: LabourRate | null,
  job: Job,
  sizes: GangSizes,
): readonly StepLabour[] {
  const parts = partsByDay(work, job);
  const worked = parts.reduce((sum, { from, to }) => sum + to - from, 0);
  const total = rate === null ? (worked / 3_600_000) * job.crew : ratedHours(rate, work, sizes);
  const { pour, toPour, turns } = work;
  return parts.map(({ date, from, to }) => {
    const share = worked === 0 ? 1 / parts.length : (to - from) / worked;
    return { date, step, pour, toPour, turns, personHours: total * share, rate };
  });
}

function areaOf(designs: readonly string[], { areaNm2 }: GangSizes): bigint {
  return designs.reduce((sum, design) => sum + areaNm2(design), 0n);
}

/** Of a re-gang those put in and taken out. */
function piecesOf(
  { kind, designs, turns }: Pick<Work, 'kind' | 'designs' | 'turns'>,
  sizes: GangSizes,
): number {
  const [from, to] = turns;
  if (kind === 'regang' && from !== undefined && to !== undefined) {
    const [left, right] = [sizes.pieces(sizes.designOf(from)), sizes.pieces(sizes.designOf(to))];
    const codes = new Set([...Object.keys(left), ...Object.keys(right)]);
    return [...codes].reduce((sum, code) => sum + Math.abs((left[code] ?? 0) - (right[code] ?? 0)), 0);
  }
  return designs
    .flatMap((design) => Object.values(sizes.pieces(design)))
    .reduce((sum, each) => sum + each, 0);
}

/** Pouring is work by others, and that strength is met is no work. */
function stepOf(kind: Work['kind']): LabourStep | null {
  switch (kind) {
    case 'pour':
    case 'ready':
      return null;
    case 'assemble':
    case 'set':
    case 'close':
    case 'strip':
    case 'fly-on':
    case 'regang':
    case 'break-down':
      return kind;
    default:
      return never(kind);
  }
}
