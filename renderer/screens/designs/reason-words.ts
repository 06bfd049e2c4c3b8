// The reasons of a take-off line as people read them: the rule in words, how many, and where, counted from
// the lower left corner as seen from the back. Reasons that differ only in their place are gathered.
import { formatLength, type UnitSystem } from '../../../core/units/length.ts';
import type { Place, Reason } from './design-shapes.ts';

/** The rules of the take-off by the words of the trade; one without an entry is shown as the core names it. */
const ruleWords: Readonly<Record<string, string>> = {
  panel: 'placed in the design',
  locks: 'locks by joint length',
  fillerLocks: 'adjustable locks at fillers',
  rails: 'stiffening rails',
  'rails.bolt': 'rail bolts, on every panel that a rail crosses',
  hooks: 'lifting hooks by weight',
  brackets: 'walkway brackets by spacing',
  braces: 'braces by spacing',
  'braces.shoe': 'brace shoes',
  ties: 'tie holes',
  onSide: 'panels on their side',
  estimate: 'quick estimate',
};

export function ruleInWords(rule: string): string {
  const edge = /^locks\.extra\.(.+)$/u.exec(rule)?.[1];
  if (edge !== undefined) return `locks added at an edge (${edge.replaceAll('-', ' ')})`;
  return ruleWords[rule] ?? rule;
}

/** "3'-0" along, 8'-0" up", or the place in words as the core gave it. */
export function placeInWords(place: Place, system: UnitSystem): string {
  if (typeof place === 'string') return place;
  return `${formatLength(place.xNm, system)} along, ${formatLength(place.yNm, system)} up`;
}

export interface ReasonGroup {
  readonly rule: string;
  readonly words: string;
  /** Pieces at each place. */
  readonly each: number;
  readonly places: readonly Place[];
  /** Pieces of all places. */
  readonly count: number;
}

/** Reasons of one rule and one count become one group, in the order in which they first appear. */
export function reasonGroups(because: readonly Reason[]): ReasonGroup[] {
  const groups = new Map<string, { rule: string; each: number; places: Place[] }>();
  for (const { rule, count, where } of because) {
    const key = `${rule} ${count}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { rule, each: count, places: [where] });
    else group.places.push(where);
  }
  return [...groups.values()].map(({ rule, each, places }) => ({
    rule,
    words: ruleInWords(rule),
    each,
    places,
    count: each * places.length,
  }));
}
