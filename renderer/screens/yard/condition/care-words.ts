// The words of this screen: how a rate came about, where pieces come back from, and days with what comes back on them.
import type { z } from 'zod';
import { never } from '../../../../core/answer.ts';
import type { repairList } from '../../../../core/procedures/repair-list.ts';
import type { yardCare } from '../../../../core/procedures/yard-care.ts';
import type { yardRates } from '../../../../core/procedures/yard-rates.ts';

export type Care = z.output<typeof yardCare.output>;
export type Repairs = z.output<typeof repairList.output>;
export type CleanRow = Care['toClean'][number];
export type ApartRow = Care['quarantine'][number];
export type BackRow = Care['dueBack'][number];
export type RepairRow = Repairs['repairs'][number];
export type WaitingRow = Repairs['waiting'][number];
export type RateRow = z.output<typeof yardRates.output>['rates'][number];

/** "5 of 36 pieces: 13.9 %" or "5 %"; one for each set; none. */
export function rateWords(used: RateRow['used']): string {
  switch (used.basis) {
    case 'own':
      return `${percentWords(used.worn, used.of)} (${used.worn} of ${used.of})`;
    case 'default':
      return percentWords(used.millionths, 1_000_000);
    case 'default-per-set':
      return '1 a set of forms';
    case 'none':
      return 'none';
    default:
      return never(used);
  }
}

/** Where a rate comes from, in one word that is never colour alone. */
export function basisWords(used: RateRow['used'], turns: number): string {
  switch (used.basis) {
    case 'own':
      return `own record, ${turns} turns`;
    case 'default':
    case 'default-per-set':
      return 'default, no source';
    case 'none':
      return 'no default';
    default:
      return never(used);
  }
}

/** One digit behind the point, and none where it is nought. */
export function percentWords(part: number, of: number): string {
  if (of === 0) return '0 %';
  const tenths = Math.round((part * 1000) / of);
  return tenths % 10 === 0 ? `${tenths / 10} %` : `${(tenths / 10).toFixed(1)} %`;
}

export const backWords: Readonly<Record<BackRow['from'], string>> = {
  cleaning: 'cleaned',
  repair: 'repaired',
  delivery: 'promised',
};

/** The days on which something comes back, in their order. */
export function byDay(
  rows: readonly BackRow[],
): readonly (readonly [date: string, rows: readonly BackRow[]])[] {
  return [...Map.groupBy(rows, ({ date }) => date)].sort(([one], [other]) => (one < other ? -1 : 1));
}
