// Lengths as people read them: feet, inches and fractions down to 1/64 in, or millimetres. What the fraction
// cannot show exactly says so with a leading ~ and is not read back as if it were exact.
import { roundHalfAway } from './exact.ts';

export type UnitSystem = 'us' | 'metric';

/** 1/64 in is 396 875 nm exactly. */
const sixtyFourthNm = 396_875n;

/** Nanometres as a number of millimetres, for answers whose key ends in `Mm`. */
export function lengthMm(lengthNm: number): number {
  return lengthNm / 1_000_000;
}

export function formatLength(lengthNm: number, system: UnitSystem): string {
  return system === 'us' ? formatLengthUs(lengthNm) : formatLengthMetric(lengthNm);
}

/** 12'-6 1/2", 8'-0", 9 3/4"; the nearest 1/64 in with a leading ~ where it is not exact. Whole nanometres in. */
export function formatLengthUs(lengthNm: number): string {
  const exact = BigInt(lengthNm);
  const rounded = roundHalfAway(exact, sixtyFourthNm);
  const size = rounded < 0n ? -rounded : rounded;
  const [feet, rest] = [size / 768n, size % 768n];
  const inches = inchesText(rest / 64n, rest % 64n, feet > 0n);
  const about = rounded * sixtyFourthNm === exact ? '' : '~';
  return `${about}${rounded < 0n ? '-' : ''}${feet > 0n ? `${feet}'-` : ''}${inches}"`;
}

function inchesText(inches: bigint, sixtyFourths: bigint, afterFeet: boolean): string {
  if (sixtyFourths === 0n) return `${inches}`;
  let [over, under] = [sixtyFourths, 64n];
  while (over % 2n === 0n) [over, under] = [over / 2n, under / 2n];
  return inches > 0n || afterFeet ? `${inches} ${over}/${under}` : `${over}/${under}`;
}

/** Millimetres without trailing zeros: "3822.7 mm". Exact to the nanometre. Whole nanometres in. */
export function formatLengthMetric(lengthNm: number): string {
  const exact = BigInt(lengthNm);
  const size = exact < 0n ? -exact : exact;
  const fraction = (size % 1_000_000n).toString().padStart(6, '0').replace(/0+$/, '');
  const point = fraction === '' ? '' : `.${fraction}`;
  return `${exact < 0n ? '-' : ''}${size / 1_000_000n}${point} mm`;
}
