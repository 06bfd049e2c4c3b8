// Every day on which a pour could finish, with what it then needs of each day; and how pours are put one after another on
// the first day that nothing forbids. Each pour keeps its own shape: its sides, steel days and close stand to its finish as
// they were entered, its strip follows by the clock.
import type { Network } from '../level/network.ts';
import type { Pour } from '../pours.ts';
import { unitsOfHours } from '../hours.ts';
import { crewResource, type DayGrid, type DayNeeds } from './day-grid.ts';
import type { HoldBack, StandsOn } from './hold-back.ts';
import type { PossibleDate } from './possible-dates.ts';

export interface DayOption extends PossibleDate {
  /** By pours with a date, gates and the first day. */
  readonly held: HoldBack | null;
  readonly needs: DayNeeds;
  readonly firstSet: number;
  /** The place of the day on which its strip ends; past the last day there is none. */
  readonly stripDay: number;
}

export type NotBefore =
  | HoldBack
  | { readonly kind: 'crew'; readonly day: number }
  | {
      readonly kind: 'component';
      readonly component: string;
      readonly missing: number;
      readonly day: number;
    };

export interface FreePours {
  readonly pours: readonly Pour[];
  readonly network: Network;
  readonly standsOn: ReadonlyMap<string, StandsOn>;
  readonly grid: DayGrid;
  readonly optionOf: (pour: number, day: number) => DayOption;
}

/** What is wrong with a day for a pour, the others placed as they are; null: nothing. */
export function notOn(
  free: FreePours,
  pour: number,
  day: number,
  placed: Int32Array,
  left: Float64Array,
): NotBefore | null {
  const option = free.optionOf(pour, day);
  return option.held ?? heldByFree(free, pour, option, placed) ?? overfull(free.grid, option.needs, left);
}

function heldByFree(
  { pours, network, standsOn, optionOf }: FreePours,
  pour: number,
  { times, firstSet }: DayOption,
  placed: Int32Array,
): HoldBack | null {
  const { from, of } = network.before;
  const below = standsOn.get(pours[pour]?.code ?? '');
  for (const first of of.subarray(from[pour], from[pour + 1])) {
    const day = placed[first] ?? -1;
    if (day < 0) continue;
    const { finish } = optionOf(first, day).times;
    const code = pours[first]?.code ?? '';
    if (times.finish <= finish) return { kind: 'after', pour: code, until: finish };
    const strong = finish + unitsOfHours(below?.strengthH ?? 0, 1);
    if (below?.pour === code && firstSet < strong) return { kind: 'stands-on', pour: code, until: strong };
  }
  return null;
}

function overfull(
  { days, components, shiftHours }: DayGrid,
  { rows }: DayNeeds,
  left: Float64Array,
): NotBefore | null {
  for (const { resource, day, amount } of rows) {
    const there = left[resource * days.length + day] ?? 0;
    if (amount <= there + 1e-9) continue;
    const onDay = days[day] ?? 0;
    if (resource !== crewResource)
      return {
        kind: 'component',
        component: components[resource - 1] ?? '',
        missing: amount - there,
        day: onDay,
      };
    // More work than a whole shift has goes where nobody else has work.
    if (there < (shiftHours[day] ?? 0)) return { kind: 'crew', day: onDay };
  }
  return null;
}

export function take({ days }: DayGrid, { rows }: DayNeeds, left: Float64Array, sign: 1 | -1): void {
  for (const { resource, day, amount } of rows) {
    const cell = resource * days.length + day;
    left[cell] = (left[cell] ?? 0) - sign * amount;
  }
}

/** Fills `starts` with the place of the day on which each finishes, and answers by which day all is stripped. */
export function placeInOrder(free: FreePours, order: Int32Array, starts: Float64Array): number {
  const { grid, optionOf } = free;
  const left = grid.left.slice();
  const placed = new Int32Array(order.length).fill(-1);
  let last = 0;
  for (const pour of order) {
    let day = 0;
    while (day < grid.days.length - 1 && notOn(free, pour, day, placed, left) !== null) day += 1;
    const option = optionOf(pour, day);
    take(grid, option.needs, left, 1);
    placed[pour] = day;
    starts[pour] = day;
    last = Math.max(last, option.stripDay + 1);
  }
  return last;
}
