// Where pieces in our hands or in our repair shop can lie, in the order in which they are offered.
import type { StockRow } from '../yard-words.ts';

export const heldKinds: readonly StockRow['locationKind'][] = [
  'yard',
  'site',
  'rack',
  'container',
  'repair',
  'gang',
  'pour',
];
export const handKinds: readonly StockRow['locationKind'][] = ['yard', 'site', 'rack', 'container'];
