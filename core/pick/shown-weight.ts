// A weight for a message, in both systems.
import { formatWeight } from '../units/weight.ts';

/** 3,561 lb (1,615.2 kg). Whole grams in. */
export function shownWeight(weightGrams: number): string {
  return `${formatWeight(weightGrams, 'us')} (${formatWeight(weightGrams, 'metric')})`;
}
