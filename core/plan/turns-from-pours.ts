// From pours to what the planner works with: a turn for every gang from the moment its side is set until
// the strip ends, and loose turns for the pieces between and around the gangs.
import type { PlanInput } from './contract.ts';
import { heldUntil, type Held } from './holds.ts';
import { instantText } from './local-time.ts';
import { oppositeHoles, type HoledDesign } from './opposite-holes.ts';
import { closingSide, pourTimes, setFromOf, type PourTimes } from './pour-times.ts';
import type { Job, Pour, SideName } from './pours.ts';

export interface PourTurn {
  readonly id: string;
  readonly pour: string;
  readonly side: SideName;
  readonly design: string;
  readonly from: number;
  readonly to: number;
}

export interface LooseTurn {
  readonly id: string;
  readonly pour: string;
  readonly component: string;
  readonly quantity: number;
  readonly purpose: string;
  /** Counted from opposite holes, not entered. */
  readonly counted: boolean;
  readonly from: number;
  readonly to: number;
}

export interface TurnsOfPours {
  readonly times: ReadonlyMap<string, PourTimes>;
  readonly turns: readonly PourTurn[];
  readonly loose: readonly LooseTurn[];
}

export const tiePurpose = 'ties through both sides';

/** @param facts of the pours of which something more was entered, by code */
export function turnsFromPours(
  job: Job,
  pours: readonly Pour[],
  designs: ReadonlyMap<string, HoledDesign>,
  facts: ReadonlyMap<string, Held> = new Map(),
): TurnsOfPours {
  const held = heldUntil(pours, job, facts);
  const times = new Map<string, PourTimes>();
  const turns: PourTurn[] = [];
  const loose: LooseTurn[] = [];
  for (const pour of pours) {
    const at = pourTimes(pour, job, held.get(pour.code));
    times.set(pour.code, at);
    for (const { side, gangs } of pour.sides) {
      const from = setFromOf(at, side);
      for (const [index, gang] of gangs.entries()) {
        const id = `${pour.code}/${side}${index + 1}`;
        turns.push({ id, pour: pour.code, side, design: gang.design, from, to: at.stripTo });
      }
    }
    loose.push(...looseOfPour(pour, at, designs));
  }
  return { times, turns, loose };
}

function looseOfPour(pour: Pour, at: PourTimes, designs: ReadonlyMap<string, HoledDesign>): LooseTurn[] {
  const closedFrom = setFromOf(at, closingSide(at));
  const held = { pour: pour.code, to: at.stripTo };
  const loose: LooseTurn[] = pour.loose.map((line, index) => ({
    ...held,
    id: `${pour.code}/loose-${index + 1}`,
    component: line.component,
    quantity: line.quantity,
    purpose: line.purpose,
    counted: false,
    from: line.side === 'both' ? closedFrom : setFromOf(at, line.side),
  }));
  const ties = pour.tieComponent === null ? 0 : oppositeHoles(pour, designs).pairs;
  if (pour.tieComponent !== null && ties > 0)
    loose.push({
      ...held,
      id: `${pour.code}/ties`,
      component: pour.tieComponent,
      quantity: ties,
      purpose: tiePurpose,
      counted: true,
      from: closedFrom,
    });
  return loose;
}

/** A component as the plan sees it: its stock over time and what hiring it costs. */
export type PlanComponent = PlanInput['components'][number];
export type PlanDesign = PlanInput['designs'][number];

/** The input of the planner for a whole job; instants in the job's time zone. */
export function planInputOf(
  job: Job,
  turnsOf: TurnsOfPours,
  designs: readonly PlanDesign[],
  components: readonly PlanComponent[],
  regangPerPieceH: Record<string, number>,
): PlanInput {
  const text = (ms: number): string => instantText(ms, job.timeZone);
  return {
    components: [...components],
    designs: [...designs],
    turns: turnsOf.turns.map(({ id, design, from, to }) => ({ id, design, from: text(from), to: text(to) })),
    loose: turnsOf.loose.map(({ id, component, quantity, from, to }) => ({
      id,
      pieces: { [component]: quantity },
      from: text(from),
      to: text(to),
    })),
    turnaround: { flyOnH: job.flyOnH, regangBaseH: job.regangBaseH, regangPerPieceH, cleanH: job.cleanH },
    labourPerH: job.labourPerHCents,
    crew: job.crew,
    shifts: job.shifts,
  };
}
