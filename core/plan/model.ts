// A plan's input made ready for sums: codes become places in lists, instants become whole units of time,
// hours and money become exact whole numbers. Everything else of the planner stands on this.
import { calendarOf, type Calendar } from './calendar.ts';
import type { PlanInput } from './contract.ts';
import { zoneDays } from './days.ts';
import { unitsOfHours } from './hours.ts';
import type { Instants } from './instants.ts';
import { fixedPlaces, toldPlaces, type FixedPlaces, type ToldPlace } from './model-choices.ts';
import { grainsOf, type Grains } from './money.ts';
import { regangHoursOf, type RegangHours } from './regang-hours.ts';

/** A level that changes at instants: `levels[n]` from `times[n]` on, 0 before the first. */
export interface Steps {
  readonly times: readonly number[];
  readonly levels: readonly number[];
}

interface ModelLoose {
  readonly id: string;
  readonly from: number;
  /** When the pieces are free again: cleaned. */
  readonly to: number;
  readonly strippedAt: number;
  readonly pieces: readonly (readonly [component: number, quantity: number])[];
}

export interface Model {
  readonly instants: Instants;
  readonly calendar: Calendar;
  readonly codes: readonly string[];
  readonly stock: readonly Steps[];
  /** Hire of a piece a day in grains; null where it cannot be hired. */
  readonly hire: readonly (bigint | null)[];
  readonly designCodes: readonly string[];
  /** Quantities, one design after another, `codes.length` to each. */
  readonly pieces: Int32Array;
  readonly assembleUnits: Float64Array;
  readonly breakDownUnits: Float64Array;
  readonly assembleGrains: readonly bigint[];
  readonly breakDownGrains: readonly bigint[];
  readonly flyOnGrains: bigint;
  readonly flyOnUnits: number;
  readonly cleanUnits: number;
  readonly regang: RegangHours;
  readonly grains: Grains;
  readonly turnIds: readonly string[];
  readonly from: Float64Array;
  readonly to: Float64Array;
  readonly design: Int32Array;
  readonly built: readonly boolean[];
  readonly loose: readonly ModelLoose[];
  /** What the crew was told; null where nothing is said of it. */
  readonly told: readonly ToldPlace[] | null;
  /** What each told instruction that a plan changes adds to its cost. */
  readonly changeGrains: bigint;
  readonly fixed: FixedPlaces;
}

/** The input must have passed `checkPlanInput`. Fixed choices come after, once it is known that they can be obeyed. */
export function modelOf(input: PlanInput, instants: Instants): Model {
  const { unitsOf, scale } = instants;
  const place = new Map(input.components.map(({ code }, index) => [code, index]));
  const designPlace = new Map(input.designs.map(({ code }, index) => [code, index]));
  const count = input.components.length;
  const pieces = new Int32Array(input.designs.length * count);
  for (const [index, design] of input.designs.entries()) {
    for (const [code, quantity] of Object.entries(design.pieces)) {
      pieces[index * count + (place.get(code) ?? 0)] = quantity;
    }
  }
  const regang = regangHoursOf(input, pieces, scale.unitsPerMs);
  const rates = input.components.flatMap(({ hirePerDay }) => (hirePerDay === null ? [] : [hirePerDay]));
  const perChange = input.told === undefined ? 0 : (input.changePerInstruction ?? 0);
  const grains = grainsOf(input.labourPerH, input.crew ?? 1, regang.places, [...rates, perChange]);
  const labour = (hours: number): bigint => regang.digitsOf(hours) * grains.perHourDigit;
  const units = (hours: number): number => unitsOfHours(hours, scale.unitsPerMs);
  const cleanUnits = units(input.turnaround.cleanH ?? 0);
  const turnIds = input.turns.map(({ id }) => id);
  const turnPlace = new Map(turnIds.map((id, index) => [id, index]));
  return {
    instants,
    calendar: calendarOf(input.shifts, scale),
    codes: input.components.map(({ code }) => code),
    stock: input.components.map(({ stock }) => stepsOf(stock, unitsOf)),
    hire: input.components.map(({ hirePerDay }) => (hirePerDay === null ? null : grains.ofRate(hirePerDay))),
    designCodes: input.designs.map(({ code }) => code),
    pieces,
    assembleUnits: Float64Array.from(input.designs, ({ assembleH }) => units(assembleH)),
    breakDownUnits: Float64Array.from(input.designs, ({ breakDownH }) => units(breakDownH)),
    assembleGrains: input.designs.map(({ assembleH }) => labour(assembleH)),
    breakDownGrains: input.designs.map(({ breakDownH }) => labour(breakDownH)),
    flyOnGrains: labour(input.turnaround.flyOnH),
    flyOnUnits: units(input.turnaround.flyOnH),
    cleanUnits,
    regang,
    grains,
    turnIds,
    from: Float64Array.from(input.turns, ({ from }) => unitsOf(from)),
    to: Float64Array.from(input.turns, ({ to }) => unitsOf(to)),
    design: Int32Array.from(input.turns, ({ design }) => designPlace.get(design) ?? 0),
    built: input.turns.map(({ built }) => built === true),
    loose: (input.loose ?? []).map(({ id, from, to, pieces: own }) => ({
      id,
      from: unitsOf(from),
      strippedAt: unitsOf(to),
      to: unitsOf(to) + cleanUnits,
      pieces: Object.entries(own).map(([code, quantity]) => [place.get(code) ?? 0, quantity] as const),
    })),
    told: input.told === undefined ? null : toldPlaces(input.told, turnPlace),
    changeGrains: grains.ofRate(perChange),
    fixed: fixedPlaces([], turnIds),
  };
}

/** The instants at which the days of hire begin, from the day of `from` through the one after that of `to`. */
export function dayStarts(model: Model, from: number, to: number): number[] {
  const { unitsPerMs, originMs } = model.instants.scale;
  const days = zoneDays(model.instants.dayZone);
  const first = days.dayOf(Math.floor(from / unitsPerMs) + originMs);
  const starts: number[] = [];
  for (let day = first; ; day += 1) {
    const start = (days.startMs(day) - originMs) * unitsPerMs;
    starts.push(start);
    if (start > to || starts.length > 200_000) return starts;
  }
}

/** The level of a step function at an instant. */
export function levelAt(steps: Steps, at: number): number {
  let [low, high] = [0, steps.times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((steps.times[middle] ?? Infinity) <= at) low = middle + 1;
    else high = middle;
  }
  return low === 0 ? 0 : (steps.levels[low - 1] ?? 0);
}

function stepsOf(stock: PlanInput['components'][number]['stock'], unitsOf: (text: string) => number): Steps {
  if (typeof stock === 'number') return { times: [-Infinity], levels: [stock] };
  const sorted = stock.map(({ from, quantity }) => ({ at: unitsOf(from), quantity }));
  sorted.sort((left, right) => left.at - right.at);
  return { times: sorted.map(({ at }) => at), levels: sorted.map(({ quantity }) => quantity) };
}
