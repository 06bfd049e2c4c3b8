// Rates and the steps they are of, in words.
import type { Output } from '../../client/shapes.ts';

type Step = Output<'dayend.rates'>['rates'][number]['step'];

export function stepName(step: Step): string {
  const names: Partial<Record<Step, string>> = {
    'fly-on': 'fly on',
    regang: 're-gang',
    'break-down': 'break down',
  };
  return names[step] ?? step;
}

/** To the thousandth of an hour. */
export function shownRate(rate: number | null): string {
  return rate === null ? '' : rate.toFixed(3);
}
