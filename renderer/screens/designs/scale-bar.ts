// The bar that says how large the drawing is: a round length in the user's units, near a wished width.
import type { UnitSystem } from '../../../core/units/length.ts';
import { footNm, inchNm, millimetreNm } from '../../../core/units/length.ts';

const inches = [1, 3, 6].map((count) => count * inchNm);
const feet = [1, 2, 4, 10, 20, 40].map((count) => count * footNm);
const metres = [10, 50, 100, 200, 500, 1000, 2000, 5000, 10_000].map((mm) => mm * millimetreNm);

/** The longest round length that is not over `mostPx`; the shortest there is where all are. */
export function scaleBarNm(pxPerNm: number, system: UnitSystem, mostPx: number): number {
  const lengths = system === 'us' ? [...inches, ...feet] : metres;
  const fits = lengths.filter((lengthNm) => lengthNm * pxPerNm <= mostPx);
  return fits.at(-1) ?? lengths[0] ?? footNm;
}
