// Places on the ground: a gang that is assembled or rebuilt stands on one from the beginning of the work until it is set,
// one that was stripped and does not fly straight on lies on one until it is clean.
import { zoneDays } from '../days.ts';
import { dayOfDate } from '../days.ts';
import type { Pad } from '../planning-settings.ts';

export interface Lying {
  readonly use: 'assemble' | 'clean';
  /** Epoch milliseconds. */
  readonly from: number;
  readonly to: number;
  readonly pour: string;
  readonly turn: string;
}

export interface PadDay {
  readonly date: string;
  /** Most gangs at once, and all places. */
  readonly needed: number;
  readonly there: number;
  /** Gangs without a place at the worst moment of the day, and of what use the places are that are wanting. */
  readonly over: number;
  readonly use: 'assemble' | 'clean' | 'both';
  /** Those that lie at the worst moment. */
  readonly lying: readonly Lying[];
}

/** @param pads those that a crane reaches */
export function padDays(
  lying: readonly Lying[],
  pads: readonly Pad[],
  dates: readonly string[],
  timeZone: string,
): readonly PadDay[] {
  const zone = zoneDays(timeZone);
  const places = placesOf(pads);
  return dates.map((date) => {
    const day = dayOfDate(date);
    const [from, to] = [zone.startMs(day), zone.startMs(day + 1)];
    const today = lying.filter((each) => each.from < to && each.to > from);
    // The number only ever rises where one begins to lie.
    const moments = [from, ...today.map((each) => each.from).filter((at) => at > from)];
    const states = moments.map((at) => stateAt(at, today, places));
    const needed = Math.max(...states.map((state) => state.lying.length));
    const worst = states.reduce((most, state) => (isWorse(state, most) ? state : most));
    return { date, needed, there: places.all, over: worst.over, use: worst.use, lying: worst.lying };
  });
}

interface Places {
  readonly assemble: number;
  readonly clean: number;
  readonly all: number;
}

function placesOf(pads: readonly Pad[]): Places {
  const sum = (...uses: Pad['use'][]): number =>
    pads.filter(({ use }) => uses.includes(use)).reduce((total, { places }) => total + places, 0);
  return {
    assemble: sum('assemble', 'both'),
    clean: sum('clean', 'both'),
    all: sum('assemble', 'clean', 'both'),
  };
}

function stateAt(at: number, today: readonly Lying[], places: Places) {
  const now = today.filter((each) => each.from <= at && each.to > at);
  const ofUse = (use: Lying['use']): number => now.filter((each) => each.use === use).length;
  const wanting = [
    { use: 'both' as const, over: now.length - places.all },
    { use: 'assemble' as const, over: ofUse('assemble') - places.assemble },
    { use: 'clean' as const, over: ofUse('clean') - places.clean },
  ].reduce((most, each) => (each.over > most.over ? each : most));
  return { lying: now, use: wanting.use, over: Math.max(0, wanting.over) };
}

type State = ReturnType<typeof stateAt>;

function isWorse(one: State, other: State): boolean {
  return one.over > other.over || (one.over === other.over && one.lying.length > other.lying.length);
}
