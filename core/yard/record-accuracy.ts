// How right the records are: the share of records that were within their tolerance. Never netted: 100 counted 95 and
// 100 counted 105 are two wrong records. 95 % is the floor and 99 % the best (published in the same inventory record
// accuracy notes as the tolerances, http://supplychainmetric.com/inventory-accuracy.html).
import type { CountResult } from './stock-count.ts';

export const accuracyFloorPercent = 95;
export const accuracyBestPercent = 99;

export interface RecordAccuracy {
  readonly records: number;
  readonly within: number;
  /** Null where nothing was counted. */
  readonly percent: number | null;
}

export function recordAccuracy(
  lines: readonly Pick<CountResult['lines'][number], 'within'>[],
): RecordAccuracy {
  const within = lines.filter((line) => line.within).length;
  return {
    records: lines.length,
    within,
    percent: lines.length === 0 ? null : (within / lines.length) * 100,
  };
}
