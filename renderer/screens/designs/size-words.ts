// Sizes as drawings write them: the unit once, at the end. In metric the numbers along dimension lines carry
// none, and the drawing says once that they are millimetres.
import { formatLength, type UnitSystem } from '../../../core/units/length.ts';

/** 12'-0" × 8'-0", or 3657.6 × 2438.4 mm. */
export function sizeWords(widthNm: number, heightNm: number, system: UnitSystem): string {
  return `${dimensionWords(widthNm, system)} × ${formatLength(heightNm, system)}`;
}

/** A length on a dimension line. */
export function dimensionWords(lengthNm: number, system: UnitSystem): string {
  return formatLength(lengthNm, system).replace(/ mm$/u, '');
}
