// What every rule of the take-off speaks in: pieces it takes, with the reason and the place, and findings.
import { formatLengthMetric, formatLengthUs } from '../units/length.ts';

export interface PointNm {
  readonly xNm: number;
  readonly yNm: number;
}

/** A place on the elevation, or in words. */
export type Place = string | PointNm;

/** A rule passed or broken at a place. `stop`: not to be built so; `source`: where the rule's number is from. */
export interface Finding {
  readonly rule: string;
  readonly severity: 'stop' | 'caution' | 'note';
  readonly message: string;
  readonly where?: Place;
  readonly source?: string;
}

/** `count` pieces of a component, taken by a rule for the thing at a place. */
export interface Taken {
  readonly component: string;
  readonly rule: string;
  readonly count: number;
  readonly where: Place;
}

export interface RuleResult {
  readonly taken: readonly Taken[];
  readonly findings: readonly Finding[];
}

export const nothingTaken: RuleResult = { taken: [], findings: [] };

/** A length for a message, in both systems: 7" (177.8 mm). */
export function shown(lengthNm: number): string {
  return `${formatLengthUs(lengthNm)} (${formatLengthMetric(lengthNm)})`;
}
