// Figures of a pick in words. What passes a limit is never rounded down to it.
import type { UnitSystem } from '../units/length.ts';

/** Percent to one decimal; a hair over 100 says so. */
export function percentWords(percent: number | null): string {
  if (percent === null) return 'not known';
  const words = percent.toFixed(1).replace(/\.0$/u, '');
  return percent > 100 && words === '100' ? 'over 100 %' : `${words} %`;
}

/** 1 mile is 1609.344 m by definition (international yard and pound agreement, 1959). */
export function speedWords(mps: number, units: UnitSystem): string {
  return units === 'metric'
    ? `${Number(mps.toFixed(1))} m/s`
    : `${Number(((mps * 3600) / 1609.344).toFixed(1))} mph`;
}

export function angleWords(angleDeg: number): string {
  return `${Number(angleDeg.toFixed(1))}° from the horizontal`;
}
