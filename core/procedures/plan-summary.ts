// A whole plan in its chief figures: what it costs part by part, how much could still be saved, what is short, how many
// gangs it uses, and the days that need most of crew and crane.
import { z } from 'zod';
import type { Compared } from './plan-difference.ts';
import { plannedCentsOf } from './planned-cents.ts';
import { cost, date, shortfall } from './shapes.ts';

const peak = z.strictObject({ date, needed: z.number(), there: z.number() });

export const planSummary = z.strictObject({
  cost,
  boundCents: z.int(),
  shortfalls: z.array(shortfall),
  /** Hire, trucks and so on of pieces that are planned to come, and the whole cost with them. */
  plannedCents: z.int(),
  allCents: z.int(),
  /** At most so much could still be saved. */
  savableCents: z.int(),
  /** Told instructions that it changes. */
  changedTold: z.int(),
  /** Runs: each is a gang that is assembled, or there already. */
  gangs: z.int(),
  pours: z.int(),
  /** The day that needs most, in crew hours; null where nothing is to be done. */
  crewPeak: peak.nullable(),
  /** In minutes of all cranes; null where no hours of a crane are set. */
  cranePeak: peak.nullable(),
});

export function summaryOf({ plan, shown, loads: byDate }: Compared): z.input<typeof planSummary> {
  const planned = plannedCentsOf(plan.facts);
  const loads = [...byDate];
  return {
    cost: shown.cost,
    boundCents: shown.boundCents,
    shortfalls: shown.shortfalls,
    plannedCents: planned,
    allCents: shown.cost.totalCents + planned,
    savableCents: Math.max(0, shown.cost.totalCents - shown.boundCents),
    changedTold: shown.changedTold,
    gangs: plan.runs.length,
    pours: plan.facts.pours.length,
    crewPeak: peakOf(
      loads.map(([day, load]) => ({ date: day, needed: load.crewHoursNeeded, there: load.crewHoursThere })),
    ),
    cranePeak: peakOf(
      loads.flatMap(([day, load]) =>
        load.craneMinutesNeeded === null
          ? []
          : [{ date: day, needed: load.craneMinutesNeeded, there: load.craneMinutesThere ?? 0 }],
      ),
    ),
  };
}

/** The first of the days that need most. */
function peakOf(days: readonly z.output<typeof peak>[]): z.output<typeof peak> | null {
  const most = days.reduce<z.output<typeof peak> | null>(
    (best, day) => (best === null || day.needed > best.needed ? day : best),
    null,
  );
  return most === null || most.needed === 0 ? null : most;
}
