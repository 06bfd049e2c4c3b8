// A count of what lies at places: entered blind or not, by one or two counters, at its own moment; what the ledger
// had at that moment is compared, and every difference is explained before it is booked as a movement.
import { z } from 'zod';
import {
  componentCode,
  conditionWord,
  moment,
  ownerCode,
  person,
  pieces,
  placeCode,
  remark,
  somePieces,
} from './paper-shapes.ts';

export const countStates = ['open', 'booked', 'dropped'] as const;
export type CountState = (typeof countStates)[number];

/** One thing to count: a component at a place, of every owner together unless one is named. */
export const countLine = z.strictObject({
  location: placeCode,
  component: componentCode,
  owner: ownerCode.nullable(),
});
export type CountLine = z.output<typeof countLine>;

export const countText = z.strictObject({
  /** `spot`: some lines chosen to be looked at; `location`: everything booked at its places. */
  kind: z.enum(['spot', 'location']),
  lines: z.array(countLine).min(1).max(2000),
  /** Counters do not see the booked figure before they have entered theirs. */
  blind: z.boolean(),
  counters: z.union([z.literal(1), z.literal(2)]),
  startedAt: moment,
  remark: remark.nullable(),
});
export type CountText = z.output<typeof countText>;

/** What one counter found on some lines; a line entered again by the same counter is a recount and takes its place. */
export const countEntry = z.strictObject({
  counter: z.union([z.literal(1), z.literal(2)]),
  lines: z
    .array(
      z.strictObject({
        location: placeCode,
        component: componentCode,
        owner: ownerCode.nullable(),
        condition: conditionWord,
        quantity: pieces,
        /** Half the width of what the figure may be off by: of a count by weight, or of a guess. */
        uncertainty: z.exactOptional(pieces),
        note: z.exactOptional(remark),
      }),
    )
    .min(1)
    .max(2000),
  /** When it was counted. */
  at: moment,
  who: person,
  device: z.string().trim().min(1).max(60),
});
export interface CountEntry extends z.output<typeof countEntry> {
  readonly id: string;
  readonly number: number;
}

export const explanations = [
  'lost',
  'found',
  'stacked-with-look-alike',
  'left-at-pour',
  'moved-without-note',
  'at-other-job',
  'condition-changed',
  'scrapped',
  'owner-mixed',
  'not-ours',
  'miscounted',
] as const;
export type Explanation = (typeof explanations)[number];

export const countClasses = ['A', 'B', 'C'] as const;
export type CountClass = (typeof countClasses)[number];

/** How so many pieces of a difference are explained; `place` and `owner` where the explanation needs them. */
export const explanationLine = z.strictObject({
  how: z.enum(explanations),
  quantity: somePieces,
  remark: remark.nullable(),
  place: z.exactOptional(placeCode),
  owner: z.exactOptional(ownerCode),
});
export type ExplanationLine = z.output<typeof explanationLine>;

export const countResult = z.strictObject({
  at: moment,
  who: person,
  lines: z.array(
    z.strictObject({
      location: placeCode,
      component: componentCode,
      owner: ownerCode.nullable(),
      booked: pieces,
      counted: pieces,
      /** Half the width of what the counted figure may be off by; zero where it was counted piece by piece. */
      uncertainty: pieces,
      countedAt: moment,
      /** As judged on the day: later prices and settings do not judge it anew. */
      class: z.enum(countClasses),
      within: z.boolean(),
      explained: z.array(explanationLine),
      /** Pieces of the difference for which nobody had an explanation. */
      leftOpen: pieces,
    }),
  ),
});
export type CountResult = z.output<typeof countResult>;

export interface StockCount extends CountText {
  readonly id: string;
  /** Printed as N-3. */
  readonly number: number;
  readonly state: CountState;
  readonly result: CountResult | null;
}

export function countName(count: { readonly number: number }): string {
  return `N-${count.number}`;
}

/** Two components that are taken for each other, and what tells them apart. */
export interface LookAlike {
  readonly component: string;
  readonly other: string;
  readonly tellApart: string;
}
