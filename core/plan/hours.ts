// Decimal hours as exact whole numbers. A number is taken as the shortest decimal that writes it, so 0.1
// is a tenth; what does not come out as a whole unit of time is rounded up to the next one, which leaves
// every comparison with a whole instant right.

/** A decimal number as `digits` x 10^-`places`. */
export interface Decimal {
  readonly digits: bigint;
  readonly places: number;
}

/** The shortest decimal that writes the number; the number must be finite. */
export function decimalOf(value: number): Decimal {
  const [mantissa = '0', exponent = '0'] = String(value).split('e');
  const [whole = '0', fraction = ''] = mantissa.split('.');
  const digits = BigInt(whole + fraction);
  const places = fraction.length - Number(exponent);
  return places >= 0 ? { digits, places } : { digits: digits * 10n ** BigInt(-places), places: 0 };
}

/** The digits of the number at the given number of decimal places, which must not be fewer than it has. */
export function digitsAt(value: Decimal, places: number): bigint {
  return value.digits * 10n ** BigInt(places - value.places);
}

/** Hours as units of time, `unitsPerMs` to the millisecond, rounded up where they are not whole. Not under 0. */
export function unitsOfHours(hours: number, unitsPerMs: number): number {
  const whole = hours * 3_600_000 * unitsPerMs;
  if (Number.isInteger(hours) && Number.isSafeInteger(whole)) return whole;
  return unitsOfDecimal(decimalOf(hours), unitsPerMs);
}

/** The same for a decimal, so that a sum of hours is rounded once. */
export function unitsOfDecimal(hours: Decimal, unitsPerMs: number): number {
  const divisor = 10n ** BigInt(hours.places);
  const product = hours.digits * 3_600_000n * BigInt(unitsPerMs);
  return Number((product + divisor - 1n) / divisor);
}
