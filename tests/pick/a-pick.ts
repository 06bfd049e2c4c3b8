// An invented crane and an invented way to pick, for tests to change.
import type { Crane, PickSetup } from '../../core/pick/setup.ts';

export const foot = 304_800_000;

export function aCrane(changes: Partial<Crane> = {}): Crane {
  return {
    code: 'C',
    name: 'Crane',
    chart: [
      { radiusNm: 20 * foot, capacityGrams: 4_000_000 },
      { radiusNm: 60 * foot, capacityGrams: 2_000_000 },
      { radiusNm: 100 * foot, capacityGrams: 1_000_000 },
    ],
    deductGrams: 0,
    cautionPercent: 75,
    stopPercent: 90,
    windLimitMps: 9,
    windWhose: 'the site',
    ...changes,
  };
}

export function aSetup(changes: Partial<PickSetup> = {}): PickSetup {
  return {
    rigging: { by: 'angle', angleDeg: 60 },
    slingsGrams: 20_000,
    equalisingGear: null,
    concreteLeftOn: 0,
    pickedUpFrom: 'standing',
    crane: 'C',
    pickUpRadiusNm: 60 * foot,
    setRadiusNm: 100 * foot,
    windMps: 5,
    windSource: 'forecast',
    ...changes,
  };
}
