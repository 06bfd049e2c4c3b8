// What lifting gear out of date takes off the level of its component: from the day after its inspection runs out, and
// at all times where it failed or never was inspected.
import { Temporal } from 'temporal-polyfill';
import type { Change } from './dirty-lots.ts';
import { gearNotReady } from './gear-ready.ts';
import type { LiftingGear } from './lifting-gear.ts';
import { isInHand, type Location, type Owner } from './movement.ts';

export interface GearChanges {
  /** Pieces to take off from the beginning, by component. */
  readonly always: ReadonlyMap<string, number>;
  readonly changes: readonly Change[];
}

/** @param startOfDate epoch milliseconds at which a date YYYY-MM-DD begins */
export function gearChanges(
  gear: readonly LiftingGear[],
  locations: readonly Location[],
  owners: readonly Owner[],
  startOfDate: (date: string) => number,
): GearChanges {
  const counts = countedGear(locations, owners);
  const always = gearNotReady(gear, longAgo, counts);
  const changes: Change[] = [];
  let known = always;
  const lastDays = [...new Set(gear.flatMap(({ last }) => (last?.passed === true ? [last.goodUntil] : [])))];
  for (const lastDay of lastDays.sort()) {
    const date = dayAfter(lastDay);
    const notReady = gearNotReady(gear, date, counts);
    for (const [component, quantity] of notReady) {
      const by = (known.get(component) ?? 0) - quantity;
      if (by !== 0) changes.push({ component, atMs: startOfDate(date), by });
    }
    known = notReady;
  }
  return { always, changes };
}

/** Whether a piece of gear is among those that a plan counts: in hand, and of an owner whose pieces count. */
export function countedGear(
  locations: readonly Location[],
  owners: readonly Owner[],
): (gear: LiftingGear) => boolean {
  const inHand = new Set(locations.filter(({ kind }) => isInHand(kind)).map(({ code }) => code));
  const notOurs = new Set(owners.filter(({ kind }) => kind === 'others').map(({ code }) => code));
  return ({ place, owner }) => inHand.has(place) && !notOurs.has(owner);
}

/** Of a date YYYY-MM-DD. */
export function dayAfter(date: string): string {
  return Temporal.PlainDate.from(date).add({ days: 1 }).toString();
}

/** Before every inspection. */
const longAgo = '0001-01-01';
