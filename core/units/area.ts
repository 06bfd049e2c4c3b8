// Areas: whole square nanometres as BigInt, since one square metre is 10^18 of them.
import { ratioNumber, roundHalfAway } from './exact.ts';
import type { UnitSystem } from './length-format.ts';
import { groupDigits } from './weight.ts';

/** Area of a rectangle in nm2, sides in whole nanometres. */
export function rectangleNm2(widthNm: number, heightNm: number): bigint {
  return BigInt(widthNm) * BigInt(heightNm);
}

/** Square nanometres as a number of square metres, for answers whose key ends in `M2`. */
export function areaM2(areaNm2: bigint): number {
  return ratioNumber(areaNm2, 10n ** 18n);
}

/** "144 sq ft" or "13.4 m²", to one decimal, halves away from zero. */
export function formatArea(areaNm2: bigint, system: UnitSystem): string {
  // 1 sq ft is 0.09290304 m2, exact by definition of the foot.
  const unit = system === 'us' ? 92_903_040_000_000_000n : 10n ** 18n;
  const tenths = roundHalfAway(areaNm2 * 10n, unit);
  const point = tenths % 10n === 0n ? '' : `.${tenths % 10n}`;
  return `${groupDigits((tenths / 10n).toString())}${point} ${system === 'us' ? 'sq ft' : 'm²'}`;
}
