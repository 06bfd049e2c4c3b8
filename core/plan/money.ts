// Money of a plan as exact whole grains: a grain is the decimal part of a minor unit at which every
// product of a rate and hours or pieces is whole. Rounding to minor units happens once, at the end.
import { decimalOf, digitsAt, type Decimal } from './hours.ts';

/** Exact amounts of one plan. A rate of labour is per hour of work, by the whole crew. */
export interface Grains {
  /** Decimal places of a grain under a minor unit. */
  readonly places: number;
  /** Decimal places at which hours are whole digits. */
  readonly hourPlaces: number;
  /** Grains for one digit of hours. */
  readonly perHourDigit: bigint;
  ofRate(rate: number): bigint;
}

export function grainsOf(
  labourPerH: number,
  crew: number,
  hourPlaces: number,
  rates: readonly number[],
): Grains {
  const perHour = product(decimalOf(labourPerH), decimalOf(crew));
  const hirePlaces = Math.max(0, ...rates.map((rate) => decimalOf(rate).places));
  const places = Math.max(hirePlaces, perHour.places + hourPlaces);
  return {
    places,
    hourPlaces,
    perHourDigit: digitsAt(perHour, places - hourPlaces),
    ofRate: (rate) => digitsAt(decimalOf(rate), places),
  };
}

/** Grains as minor units, rounded once, half up. Not under 0. */
export function roundHalfUp(grains: bigint, places: number): bigint {
  const whole = 10n ** BigInt(places);
  return (2n * grains + whole) / (2n * whole);
}

/** The greatest whole number of minor units not above the grains. */
export function roundDown(grains: bigint, places: number): bigint {
  const whole = 10n ** BigInt(places);
  return grains >= 0n ? grains / whole : -((-grains + whole - 1n) / whole);
}

function product(left: Decimal, right: Decimal): Decimal {
  return { digits: left.digits * right.digits, places: left.places + right.places };
}
