// Rates and the steps they are of, in words.
import type { Output } from '../../client/shapes.ts';

type Rate = Output<'dayend.rates'>['rates'][number];
type Step = Rate['step'] | NonNullable<Rate['offered']>['step'];

export function stepName(step: Step): string {
  const names: Partial<Record<Step, string>> = {
    'fly-on': 'fly on',
    regang: 're-gang',
    'break-down': 'break down',
  };
  return names[step] ?? step;
}

export const unitWords = {
  'h/m2': 'h/m²',
  'h/ft2': 'h/sq ft',
  'h/gang': 'h a gang',
  'h/piece': 'h a piece',
} as const;

/** To the thousandth of an hour. */
export function shownRate(rate: number | null): string {
  return rate === null ? '' : rate.toFixed(3);
}
