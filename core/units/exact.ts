// Exact arithmetic on fractions of whole numbers. Lengths, weights and rail lines are compared without
// rounding, so what is typed stays a fraction (numerator over denominator) until the one rounding at its end.

/** A fraction; `under` is always positive. */
export interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

/** Reads a plain decimal ("12", "-3.25", ".5", "1e-7") exactly. Undefined where it is none. */
export function decimalRatio(text: string): Ratio | undefined {
  const parts = /^([+-]?)(\d*)(?:\.(\d+))?(?:e([+-]?\d{1,3}))?$/i.exec(text);
  if (parts === null) return undefined;
  const [, sign, whole = '', fraction = '', exponent = '0'] = parts;
  if (whole === '' && fraction === '') return undefined;
  const digits = BigInt(whole + fraction) * (sign === '-' ? -1n : 1n);
  const places = fraction.length - Number(exponent);
  return places >= 0
    ? { over: digits, under: 10n ** BigInt(places) }
    : { over: digits * 10n ** BigInt(-places), under: 1n };
}

/** The decimal a number prints as, exactly: 0.1 is one tenth here. Undefined for NaN and infinities. */
export function numberRatio(value: number): Ratio | undefined {
  return Number.isFinite(value) ? decimalRatio(String(value)) : undefined;
}

/** over / under rounded to a whole number, halves away from zero. `under` must be positive. */
export function roundHalfAway(over: bigint, under: bigint): bigint {
  const size = over < 0n ? -over : over;
  const rounded = (2n * size + under) / (2n * under);
  return over < 0n ? -rounded : rounded;
}

/** The least whole number not under over / under. `under` must be positive. */
export function ceilDivide(over: bigint, under: bigint): bigint {
  const quotient = over / under;
  return quotient * under < over ? quotient + 1n : quotient;
}

/** A whole number that a double holds exactly, or undefined. */
export function safeNumber(value: bigint): number | undefined {
  const number = Number(value);
  return Number.isSafeInteger(number) ? number : undefined;
}

/** over / under as the double nearest to its first `places` decimals. `under` must be positive. */
export function ratioNumber(over: bigint, under: bigint, places = 18): number {
  const scaled = roundHalfAway(over * 10n ** BigInt(places), under);
  const digits = (scaled < 0n ? -scaled : scaled).toString().padStart(places + 1, '0');
  const text = `${digits.slice(0, digits.length - places)}.${digits.slice(digits.length - places)}`;
  return scaled < 0n ? -Number(text) : Number(text);
}
