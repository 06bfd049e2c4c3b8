// How far arrows move a piece and to what a dragged one goes where no edge is near: whole inches or tens of
// millimetres, finely sixteenths or single ones.
import type { UnitSystem } from '../../../../core/units/length.ts';
import { inchNm, millimetreNm } from '../../../../core/units/length.ts';

export function stepNm(system: UnitSystem): number {
  return system === 'us' ? inchNm : 10 * millimetreNm;
}

export function fineStepNm(system: UnitSystem): number {
  return system === 'us' ? inchNm / 16 : millimetreNm;
}
