// What placing pours rests on, out of the plan of those that have a date: what each holds and works, what the others
// hold, the hours that the crew has left.
import type { PlaceAsk } from '../plan/dates/place-pours.ts';
import type { CrewWork, HeldPieces } from '../plan/dates/day-grid.ts';
import { unitsOfHours } from '../plan/hours.ts';
import { msOf } from '../plan/local-time.ts';
import type { PourTimes } from '../plan/pour-times.ts';
import type { Pour } from '../plan/pours.ts';
import { turnsFromPours } from '../plan/turns-from-pours.ts';
import { found } from './by-code.ts';
import { aroundOf } from './date-facts.ts';
import type { JobPlan } from './job-plan.ts';

/** Enough for the sequences of a job; a search ends sooner where nothing can be earlier. */
const schedules = 600;

export function placeAsk({ facts, steps }: JobPlan, free: readonly Pour[], seed: number): PlaceAsk {
  const { job, designs, pours, stock } = facts;
  const held = (some: readonly Pour[]): readonly HeldPieces[] => {
    const { turns, loose } = turnsFromPours(job, some, designs);
    const clean = unitsOfHours(job.cleanH, 1);
    return [
      ...turns.flatMap(({ design, from, to }) =>
        Object.entries(found(designs, design).pieces).map(([component, quantity]) => ({
          component,
          quantity,
          from,
          to: to + clean,
        })),
      ),
      ...loose.map(({ component, quantity, from, to }) => ({ component, quantity, from, to: to + clean })),
    ];
  };
  return {
    around: aroundOf(facts),
    free,
    piecesOf: (pour) => held([pour]),
    workOf,
    heldByDated: held(pours),
    // A step may have pauses between its sides: only its hours count.
    workOfDated: steps.map(({ from, hours }) => ({ from, to: from + unitsOfHours(hours, 1) })),
    levels: new Map(
      [...stock].map(([component, { levels }]) => [
        component,
        levels.map(({ from, quantity }) => ({ fromMs: from === null ? -Infinity : msOf(from), quantity })),
      ]),
    ),
    schedules,
    seed,
  };
}

function workOf(_: Pour, { sides, stripFrom, stripTo }: PourTimes): readonly CrewWork[] {
  return [
    ...sides.map(({ setFrom, setTo }) => ({ from: setFrom, to: setTo })),
    { from: stripFrom, to: stripTo },
  ].filter(({ from, to }) => to > from);
}
