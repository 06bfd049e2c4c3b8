// The list of a day: what the plan has for its date, and what was left over from earlier days and is still to be
// done. A day that was ended already shows what was reported, so that ending it once more corrects that.
import type { ReportedKind, Step, StepKind } from '../steps.ts';
import { reportedKinds } from '../steps.ts';
import {
  countingReports,
  type DayReport,
  leftOverBefore,
  type LeftOver,
  reportedId,
  type ReportedStep,
  stepId,
} from './reports.ts';

export interface DayLine {
  readonly id: string;
  readonly kind: ReportedKind;
  readonly pour: string;
  readonly toPour: string | null;
  readonly turns: readonly string[];
  readonly designs: readonly { readonly design: string; readonly quantity: number }[];
  /** Epoch milliseconds, as planned. */
  readonly from: number;
  readonly to: number;
  readonly leftFrom: string | null;
  readonly reported: ReportedStep | null;
}

/** @param ms reads an instant of a report */
export function dayLines(
  date: string,
  steps: readonly Step[],
  reports: readonly DayReport[],
  ms: (instant: string) => number,
): readonly DayLine[] {
  const report = countingReports(reports).find(({ entry }) => entry.date === date);
  if (report !== undefined) return report.entry.steps.map((step) => reportedLine(date, step, ms));
  const left = leftOverBefore(date, reports);
  const today = steps.flatMap((step) => (step.date === date ? plannedLine(step, left) : []));
  return [
    ...left.filter((each) => isStillOpen(each, date, steps)).map((each) => leftLine(each, ms)),
    ...today,
  ];
}

/** Dates of steps before the date, from the first report on, whose day nobody has ended. */
export function notEnded(
  date: string,
  steps: readonly Step[],
  reports: readonly DayReport[],
): readonly string[] {
  const ended = new Set(countingReports(reports).map(({ entry }) => entry.date));
  const first = [...ended].sort()[0];
  if (first === undefined) return [];
  const dates = new Set(steps.filter(({ kind }) => isReported(kind)).map((step) => step.date));
  return [...dates].filter((each) => each >= first && each < date && !ended.has(each)).sort();
}

export function isReported(kind: StepKind): kind is ReportedKind {
  return reportedKinds.some((each) => each === kind);
}

/**
 * Work of a pour has gone on to another day in the plan, and is listed there. Work of a gang stays in the plan on
 * the day on which it was to be done; where the plan has it on another day by now, or not at all, that counts.
 */
function isStillOpen({ date, step, id }: LeftOver, today: string, steps: readonly Step[]): boolean {
  if (isOfPour(step.kind)) return false;
  return date < today && steps.some((each) => stepId(each.date, each) === id);
}

function plannedLine(step: Step, left: readonly LeftOver[]): readonly DayLine[] {
  const { date, kind, pour, toPour, turns, designs, from, to } = step;
  if (!isReported(kind)) return [];
  const before = isOfPour(kind)
    ? left.find((each) => each.step.kind === kind && each.step.pour === pour)
    : undefined;
  return [
    {
      id: stepId(before?.date ?? date, step),
      kind,
      pour,
      toPour,
      turns,
      designs,
      from,
      to,
      leftFrom: before?.date ?? null,
      reported: null,
    },
  ];
}

function isOfPour(kind: ReportedKind): boolean {
  return kind === 'set' || kind === 'close' || kind === 'pour' || kind === 'strip';
}

function leftLine({ id, date, step }: LeftOver, ms: (instant: string) => number): DayLine {
  return { ...ofReport(step, ms), id, leftFrom: date, reported: null };
}

function reportedLine(date: string, step: ReportedStep, ms: (instant: string) => number): DayLine {
  return { ...ofReport(step, ms), id: reportedId(date, step), leftFrom: step.leftFrom, reported: step };
}

function ofReport(step: ReportedStep, ms: (instant: string) => number) {
  const { kind, pour, toPour, turns, designs, plannedFrom, plannedTo } = step;
  return { kind, pour, toPour, turns, designs, from: ms(plannedFrom), to: ms(plannedTo) };
}
