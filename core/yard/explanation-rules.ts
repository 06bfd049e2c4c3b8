// What each explanation of a difference can explain, and what it has to name. One table, so that what a screen offers
// and what a booking takes are the same.
import type { LocationKind } from './movement.ts';
import type { Explanation } from './stock-count.ts';

export interface ExplanationRule {
  /** Which differences it explains: fewer than booked, more, both, or pieces found in another condition. */
  readonly explains: 'short' | 'over' | 'either' | 'condition';
  /** Kinds of location one of which it names; none where it names no place. */
  readonly places: readonly LocationKind[];
  readonly isPlaceNeeded: boolean;
  /** As it stands in the remark of the movements. */
  readonly words: string;
}

const noPlace = { places: [], isPlaceNeeded: false } as const;

export const explanationRules: Readonly<Record<Explanation, ExplanationRule>> = {
  lost: { explains: 'short', ...noPlace, words: 'lost' },
  found: { explains: 'over', ...noPlace, words: 'found' },
  'stacked-with-look-alike': { explains: 'either', ...noPlace, words: 'stacked with a look-alike' },
  'left-at-pour': {
    explains: 'short',
    places: ['pour', 'gang'],
    isPlaceNeeded: false,
    words: 'left at a pour',
  },
  'moved-without-note': {
    explains: 'either',
    places: ['yard', 'rack', 'site', 'container', 'repair'],
    isPlaceNeeded: true,
    words: 'moved without a note',
  },
  'at-other-job': { explains: 'either', places: ['other-job'], isPlaceNeeded: true, words: 'at another job' },
  'condition-changed': { explains: 'condition', ...noPlace, words: 'in another condition' },
  scrapped: { explains: 'short', ...noPlace, words: 'scrapped without a note' },
  'owner-mixed': { explains: 'either', ...noPlace, words: 'taken for those of another owner' },
  'not-ours': { explains: 'over', ...noPlace, words: 'not ours' },
  miscounted: { explains: 'either', ...noPlace, words: 'counted wrongly' },
};

/** Whether it can explain a line that is so many short (less than zero) or over. */
export function explainsDifference(how: Explanation, difference: number): boolean {
  const { explains } = explanationRules[how];
  if (explains === 'condition' || difference === 0) return false;
  return explains === 'either' || (explains === 'short') === difference < 0;
}
