// Days on which more is wanted than is there: hours of the crew, minutes of a crane, places on the ground; each with the
// steps that want it.
import type { CraneDay } from './crane-days.ts';
import type { StepLabour } from './labour.ts';
import type { PadDay } from './pads.ts';

export interface OverloadCause {
  readonly step: string;
  readonly pour: string;
  readonly toPour: string | null;
  /** Hours of people, minutes of the crane, or gangs. */
  readonly amount: number;
}

export interface Overload {
  readonly id: string;
  readonly kind: 'crew' | 'crane' | 'pads';
  readonly date: string;
  readonly crane: string | null;
  readonly use: 'assemble' | 'clean' | 'both' | null;
  /** Hours of people, minutes of the crane, or places. */
  readonly needed: number;
  readonly there: number;
  /** How much is wanting: of a crane also what does not fit although there are minutes enough. */
  readonly missing: number;
  readonly causes: readonly OverloadCause[];
}

export interface CrewDay {
  readonly date: string;
  readonly hoursNeeded: number;
  readonly hoursThere: number;
}

/** What hours may differ by and still be the same: a hundredth of a minute. */
const hair = 1 / 6000;

/** By date; crew, crane and pads of a date in this order. */
export function overloadsOf(
  crew: readonly CrewDay[],
  labour: readonly StepLabour[],
  cranes: readonly CraneDay[],
  pads: readonly PadDay[],
): readonly Overload[] {
  const labourOn = Map.groupBy(labour, ({ date }) => date);
  const all = [
    ...crew.flatMap((day) => crewOverload(day, labourOn.get(day.date) ?? [])),
    ...cranes.flatMap(craneOverload),
    ...pads.flatMap(padOverload),
  ];
  // Sorting keeps the order within a date.
  return all.sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));
}

function crewOverload(
  { date, hoursNeeded, hoursThere }: CrewDay,
  labour: readonly StepLabour[],
): readonly Overload[] {
  if (hoursNeeded <= hoursThere + hair) return [];
  const causes = labour.map(({ step, pour, toPour, personHours }) => ({
    step,
    pour,
    toPour,
    amount: personHours,
  }));
  return [
    {
      id: `crew@${date}`,
      kind: 'crew',
      date,
      crane: null,
      use: null,
      needed: hoursNeeded,
      there: hoursThere,
      missing: hoursNeeded - hoursThere,
      causes: joined(causes),
    },
  ];
}

function craneOverload({
  crane,
  date,
  minutesNeeded,
  minutesThere,
  minutesOver,
  picks,
}: CraneDay): readonly Overload[] {
  if (minutesOver === 0) return [];
  const causes = picks.map(({ pick, minutes }) => ({
    step: pick.kind,
    pour: pick.pour,
    toPour: pick.toPour,
    amount: minutes,
  }));
  return [
    {
      id: `crane:${crane}@${date}`,
      kind: 'crane',
      date,
      crane,
      use: null,
      needed: minutesNeeded,
      there: minutesThere,
      missing: minutesOver,
      causes: joined(causes),
    },
  ];
}

function padOverload({ date, needed, there, over, use, lying }: PadDay): readonly Overload[] {
  if (over === 0) return [];
  const wanting = lying.filter((each) => use === 'both' || each.use === use);
  const causes = wanting.map((each) => ({ step: each.use, pour: each.pour, toPour: null, amount: 1 }));
  const [gangs, places] = use === 'both' ? [needed, there] : [wanting.length, wanting.length - over];
  return [
    {
      id: `pads@${date}`,
      kind: 'pads',
      date,
      crane: null,
      use,
      needed: gangs,
      there: places,
      missing: over,
      causes: joined(causes),
    },
  ];
}

/** Like steps of one pour as one, the greatest first. */
function joined(causes: readonly OverloadCause[]): readonly OverloadCause[] {
  const byStep = Map.groupBy(causes, ({ step, pour, toPour }) => JSON.stringify([step, pour, toPour]));
  return [...byStep.values()]
    .flatMap(([first, ...rest]) =>
      first === undefined
        ? []
        : [{ ...first, amount: rest.reduce((sum, each) => sum + each.amount, first.amount) }],
    )
    .sort((one, other) => other.amount - one.amount);
}
