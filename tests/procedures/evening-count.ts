// Invented scenario: the count of a yard on the evening of a working day, with what is owned, what stands in forms, and
// what the counters wrote down; two pours stand and a third was stripped that day. The figures are a table of their own
// and are not to be changed: what the app says is held against them.
import type { Condition } from '../../core/yard/movement.ts';

export interface EveningLine {
  readonly component: string;
  readonly name: string;
  readonly kind: string;
  readonly widthIn?: number;
  readonly heightIn?: number;
  readonly owned: number;
  /** At the two pours that stand. */
  readonly standing: number;
  readonly expected: number;
  /** As the counter found them. */
  readonly counted: Readonly<Partial<Record<Condition, number>>>;
  readonly difference: number;
}

export const eveningLines: readonly EveningLine[] = [
  { component: 'P836', name: 'Panel 36 in x 8 ft', kind: 'panel', widthIn: 36, heightIn: 96, owned: 36, standing: 16, expected: 20, counted: { ready: 11, 'to-clean': 6, 'to-repair': 1, scrapped: 1 }, difference: -1 },
  { component: 'P436', name: 'Panel 36 in x 4 ft', kind: 'panel', widthIn: 36, heightIn: 48, owned: 36, standing: 16, expected: 20, counted: { ready: 15, 'to-clean': 6 }, difference: 1 },
  { component: 'P824', name: 'Panel 24 in x 8 ft', kind: 'panel', widthIn: 24, heightIn: 96, owned: 12, standing: 8, expected: 4, counted: { ready: 4 }, difference: 0 },
  { component: 'LK', name: 'Lock', kind: 'lock', owned: 340, standing: 198, expected: 142, counted: { ready: 126 }, difference: -16 },
  { component: 'R12', name: 'Rail 12 ft', kind: 'stiffening-rail', owned: 24, standing: 12, expected: 12, counted: { ready: 11, 'to-repair': 1 }, difference: 0 },
  { component: 'R8', name: 'Rail 8 ft', kind: 'stiffening-rail', owned: 9, standing: 0, expected: 9, counted: { ready: 9 }, difference: 0 },
  { component: 'RC', name: 'Rail clip', kind: 'rail-bolt', owned: 128, standing: 48, expected: 80, counted: { ready: 81 }, difference: 1 },
  { component: 'WB', name: 'Walkway bracket', kind: 'bracket', owned: 24, standing: 8, expected: 16, counted: { ready: 16 }, difference: 0 },
  { component: 'BR', name: 'Brace', kind: 'brace', owned: 16, standing: 8, expected: 8, counted: { ready: 7 }, difference: -1 },
  { component: 'TR', name: 'Tie rod set', kind: 'tie', owned: 240, standing: 0, expected: 240, counted: { ready: 240 }, difference: 0 },
]; // prettier-ignore

/** The rail clips: 61 loose, and a sealed bag of about 20. */
export const sealedBag = { loose: 61, bag: 20 } as const;

/** Tie rod sets were written down as bundles. */
export const tieRods = { written: '12 bdl', bundleSize: 20 } as const;

/** Locks: where the 16 were in truth. */
export const missingLocks = {
  inBucketAtPour: 12,
  lost: 4,
  percentOfOwned: 4.7,
  percentOfExpected: 11.3,
} as const;

/** By the counted stock: locks that are there, panels that can be used, and what is then short on which day. */
export const countedStock = { LK: 324, P836: 35 } as const;
export const shortByCount: Readonly<Record<5 | 7 | 8, Readonly<Record<string, number>>>> = {
  5: { LK: 4, R8: 3 },
  7: { LK: 18, P836: 1 },
  8: { LK: 110, P836: 5 },
};
