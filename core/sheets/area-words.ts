// An area kept in square metres, in words.
import { formatArea } from '../units/area.ts';
import type { UnitSystem } from '../units/length.ts';

export function areaWords(areaM2: number, units: UnitSystem): string {
  return formatArea(BigInt(Math.round(areaM2 * 1e9)) * 1_000_000_000n, units);
}
