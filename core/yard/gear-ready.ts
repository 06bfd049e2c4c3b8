// What lifting gear out of date takes off the ready quantity of its component. The ledger counts pieces, the serial
// numbers say which of them may lift; a piece whose inspection has run out, failed or never was is not ready.
import { isGearReady, type LiftingGear } from './lifting-gear.ts';
import type { StockLine } from './quantities.ts';

/**
 * Pieces to take off the ready quantity, by component; components of which all are ready are not in it.
 * @param date YYYY-MM-DD
 * @param counts which pieces are among those whose ready quantity is asked for; all if absent
 */
export function gearNotReady(
  gear: readonly LiftingGear[],
  date: string,
  counts: (gear: LiftingGear) => boolean = () => true,
): ReadonlyMap<string, number> {
  const notReady = new Map<string, number>();
  for (const each of gear) {
    if (!counts(each) || isGearReady(each, date)) continue;
    notReady.set(each.component, (notReady.get(each.component) ?? 0) + 1);
  }
  return notReady;
}

/** Why a piece is not ready on a date, or that it is. */
export type GearStanding =
  | { readonly is: 'ready'; readonly until: string }
  | { readonly is: 'never-inspected' }
  | { readonly is: 'failed'; readonly on: string }
  | { readonly is: 'out-of-date'; readonly since: string };

/** Out of date since the last day on which the inspection held. */
export function gearStanding(gear: LiftingGear, date: string): GearStanding {
  const { last } = gear;
  if (last === null) return { is: 'never-inspected' };
  if (!last.passed) return { is: 'failed', on: last.inspectedOn };
  if (!isGearReady(gear, date)) return { is: 'out-of-date', since: last.goodUntil };
  return { is: 'ready', until: last.goodUntil };
}

/** More serial numbers at a place than the ledger has pieces of that component and owner there. */
export interface SerialsOver {
  readonly component: string;
  readonly owner: string;
  readonly place: string;
  readonly serials: number;
  readonly pieces: number;
}

/** @param lines of stock, in any condition */
export function serialsOver(
  gear: readonly LiftingGear[],
  lines: readonly StockLine[],
): readonly SerialsOver[] {
  const pieces = new Map<string, number>();
  for (const { component, owner, location, quantity } of lines) {
    const key = keyOf(component, owner, location);
    pieces.set(key, (pieces.get(key) ?? 0) + quantity);
  }
  const groups = Map.groupBy(gear, ({ component, owner, place }) => keyOf(component, owner, place));
  return [...groups].flatMap(([key, serials]) => {
    const there = pieces.get(key) ?? 0;
    const [first] = serials;
    if (first === undefined || serials.length <= there) return [];
    const { component, owner, place } = first;
    return [{ component, owner, place, serials: serials.length, pieces: there }];
  });
}

function keyOf(component: string, owner: string, place: string): string {
  return JSON.stringify([component, owner, place]);
}
