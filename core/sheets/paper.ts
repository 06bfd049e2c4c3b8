// Scales of drawings on paper. A drawing is made in millimetres of paper at a scale people have a rule for, the
// largest at which it fits; its viewBox is in those millimetres, so that it prints to scale at 100 %.
import type { UnitSystem } from '../units/length.ts';

export interface PaperScale {
  /** Millimetres of the gang for one of the paper. */
  readonly ratio: number;
  /** "1:24, 1/2 in is a foot" or "1:25". */
  readonly words: string;
}

/** Feet and inches on an architect's scale, by the part of an inch that is a foot. */
const usScales: readonly PaperScale[] = [
  [8, '1 1/2'],
  [12, '1'],
  [16, '3/4'],
  [24, '1/2'],
  [32, '3/8'],
  [48, '1/4'],
  [64, '3/16'],
  [96, '1/8'],
  [128, '3/32'],
  [192, '1/16'],
  [384, '1/32'],
].map(([ratio, inches]) => ({ ratio: Number(ratio), words: `1:${ratio}, ${inches} in is 1 ft` }));

const metricScales: readonly PaperScale[] = [10, 20, 25, 30, 40, 50, 75, 100, 200, 500].map((ratio) => ({
  ratio,
  words: `1:${ratio}`,
}));

/** The largest usual scale at which a thing of this size fits; beyond the last, by doubling it. */
export function paperScale(
  size: { readonly widthNm: number; readonly heightNm: number },
  box: { readonly widthMm: number; readonly heightMm: number },
  units: UnitSystem,
): PaperScale {
  const fits = ({ ratio }: PaperScale): boolean =>
    size.widthNm / ratio <= box.widthMm * 1e6 && size.heightNm / ratio <= box.heightMm * 1e6;
  const scales = units === 'us' ? usScales : metricScales;
  const found = scales.find(fits);
  if (found !== undefined) return found;
  let ratio = scales.at(-1)?.ratio ?? 500;
  while (!fits({ ratio, words: '' })) ratio *= 2;
  return { ratio, words: `1:${ratio}` };
}

/** Millimetres of paper as an attribute: to the hundredth. */
export function mm(value: number): string {
  return String(Math.round(value * 100) / 100);
}
