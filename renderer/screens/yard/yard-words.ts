// The words of the ledger on this screen, and how a figure came about.
import type { z } from 'zod';
import type { yardMovements } from '../../../core/procedures/yard-movements.ts';
import type { yardPlaces } from '../../../core/procedures/yard-places.ts';
import type { yardQuantities } from '../../../core/procedures/yard-quantities.ts';
import { shortDate } from '../../parts/time-words.ts';

export type StockRow = z.output<typeof yardQuantities.output>['rows'][number];
export type MovementRow = z.output<typeof yardMovements.output>['rows'][number];
/** The locations and owners that can be named. */
export type Places = z.output<typeof yardPlaces.output>;
export type Condition = StockRow['condition'];
export type Reason = MovementRow['reason'];

export const conditionWords: Readonly<Record<Condition, string>> = {
  ready: 'ready',
  'ready-hidden': 'ready, hidden faces only',
  'to-clean': 'to clean',
  'to-repair': 'to repair',
  quarantine: 'quarantine',
  scrapped: 'scrapped',
};

export const reasonWords: Readonly<Record<Reason, string>> = {
  opening: 'opening figure',
  delivery: 'delivery',
  return: 'return to supplier',
  transfer: 'transfer',
  'hire-on': 'hire on',
  'hire-off': 'hire off',
  issue: 'issue',
  'break-down': 'broken down',
  strip: 'strip',
  clean: 'cleaned',
  repair: 'repaired',
  quarantine: 'quarantine',
  scrap: 'scrapped',
  lost: 'lost',
  found: 'found',
  'owner-swap': 'swap between owners',
  reversal: 'reversal',
};

export const placeKindWords: Readonly<Record<StockRow['locationKind'], string>> = {
  yard: 'yard',
  rack: 'rack',
  site: 'site',
  container: 'container',
  gang: 'gang',
  pour: 'pour',
  repair: 'repair shop',
  'other-job': 'another job',
  supplier: 'supplier',
  scrap: 'scrap',
  lost: 'lost',
  opening: 'before the book',
};

const basisPhrases = {
  counted: 'counted',
  estimated: 'estimated',
  'taken-from-list': 'from a list',
} as const;

/** "counted 27 Feb 2026"; nothing where the quantity rests on no opening figure. */
export function basisWords(row: Pick<StockRow, 'basis' | 'basisDate'>): string {
  if (row.basis === null) return '';
  const date = row.basisDate === null ? '' : ` ${shortDate(row.basisDate)} ${row.basisDate.slice(0, 4)}`;
  return `${basisPhrases[row.basis]}${date}`;
}

/** The weakest basis among rows and its oldest date, for a line that stands for several. */
export function weakestBasis(rows: readonly StockRow[]): Pick<StockRow, 'basis' | 'basisDate'> {
  for (const basis of ['estimated', 'taken-from-list', 'counted'] as const) {
    const dates = rows.filter((row) => row.basis === basis).map((row) => row.basisDate);
    if (dates.length === 0) continue;
    const known = dates.filter((date) => date !== null).sort();
    return { basis, basisDate: known[0] ?? null };
  }
  return { basis: null, basisDate: null };
}
