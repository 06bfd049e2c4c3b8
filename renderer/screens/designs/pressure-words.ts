// The pressure of fresh concrete that a gang may take, and the panel by which it goes.
import type { UnitSystem } from '../../../core/units/length.ts';
import { formatPressure } from '../../../core/units/pressure.ts';
import type { ShownTakeOff } from './design-shapes.ts';

/** "1,250 psf, by P836 on its side". */
export function pressureWords({ permittedPressure }: ShownTakeOff, system: UnitSystem): string {
  if (permittedPressure === null) return 'not told of every panel';
  const { pa, panel, onSide } = permittedPressure;
  return `${formatPressure(pa, system)}, by ${panel}${onSide ? ' on its side' : ''}`;
}
