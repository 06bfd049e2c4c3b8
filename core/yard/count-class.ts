// Classes of components by what is tied up in them: A is counted most often and most exactly. The tolerances and
// how often each is counted are published in inventory record accuracy notes (http://supplychainmetric.com/
// inventory-accuracy.html); the shares of 80, 15 and 5 % by value are common practice, no source.
import { Temporal } from 'temporal-polyfill';
import type { CountClass } from './stock-count.ts';

/** Percent of the booked figure by which a count may differ and the record still be right. */
export const tolerancePercent: Readonly<Record<CountClass, number>> = { A: 1, B: 3, C: 5 };

export const countsAYear: Readonly<Record<CountClass, number>> = { A: 4, B: 2, C: 1 };

/** Of the value held, in percent: class A up to the first, B up to the second, C the rest. */
export const classShares = { A: 80, B: 95 } as const;

/** Worth counting: what one knows of a component, and how many are held. */
export interface HeldWorth {
  readonly component: string;
  readonly held: number;
  /** What a new one costs; null where nobody has entered it. */
  readonly valueCents: number | null;
  /** Of one piece; null where it cannot be hired. */
  readonly hirePerDayCents: number | null;
}

export interface Classed {
  readonly component: string;
  readonly class: CountClass;
  /** `value` and `hire`: ranked among the components for which the same is known; `nothing`: neither is known. */
  readonly by: 'hand' | 'value' | 'hire' | 'nothing' | 'none-held';
  /** Of all pieces held, in minor units: their value, or their hire per day. Null where neither is known. */
  readonly worthCents: number | null;
  /** Its part of the sum it is ranked in, in percent; null where it is not ranked. */
  readonly sharePercent: number | null;
}

/**
 * One a component, in their order. Values and hire rates are never added up: those without a value are ranked by hire
 * per day among themselves. The component that crosses a share stands in the higher class.
 * @param byHand classes set by hand: long lead times, trouble
 */
export function classify(
  components: readonly HeldWorth[],
  byHand: Readonly<Record<string, CountClass>>,
): readonly Classed[] {
  const ranked = new Map<string, { readonly class: CountClass; readonly sharePercent: number }>();
  for (const by of ['value', 'hire'] as const)
    for (const [component, rank] of ranking(components.filter((each) => basisOf(each) === by)))
      ranked.set(component, rank);
  return components.map((each) => {
    const rank = ranked.get(each.component);
    const hand = Object.hasOwn(byHand, each.component) ? byHand[each.component] : undefined;
    return {
      component: each.component,
      class: hand ?? rank?.class ?? 'C',
      by: hand === undefined ? basisOf(each) : 'hand',
      worthCents: worthOf(each),
      sharePercent: rank?.sharePercent ?? null,
    };
  });
}

function basisOf({ held, valueCents, hirePerDayCents }: HeldWorth): Classed['by'] {
  if (valueCents === null && hirePerDayCents === null) return 'nothing';
  if (held <= 0) return 'none-held';
  return valueCents === null ? 'hire' : 'value';
}

function worthOf({ held, valueCents, hirePerDayCents }: HeldWorth): number | null {
  const each = valueCents ?? hirePerDayCents;
  return each === null ? null : each * Math.max(0, held);
}

function ranking(components: readonly HeldWorth[]) {
  const worths = components
    .map((each) => ({ component: each.component, worth: worthOf(each) ?? 0 }))
    .sort((one, other) => other.worth - one.worth || (one.component < other.component ? -1 : 1));
  const sum = worths.reduce((total, { worth }) => total + worth, 0);
  let before = 0;
  return new Map(
    worths.map(({ component, worth }) => {
      const is = (share: number): boolean => before * 100 < share * sum;
      const place: CountClass = is(classShares.A) ? 'A' : is(classShares.B) ? 'B' : 'C';
      before += worth;
      return [component, { class: place, sharePercent: sum === 0 ? 0 : (worth / sum) * 100 }];
    }),
  );
}

/** Whether a count agrees with the book: exact, so that 1 of 100 is within 1 %. */
export function isWithin(booked: number, counted: number, place: CountClass): boolean {
  return Math.abs(counted - booked) * 100 <= tolerancePercent[place] * booked;
}

/** The day on which the class is to be counted again, YYYY-MM-DD; null where it is due at once: never counted. */
export function nextDue(place: CountClass, lastCountedOn: string | null): string | null {
  if (lastCountedOn === null) return null;
  return Temporal.PlainDate.from(lastCountedOn)
    .add({ months: 12 / countsAYear[place] })
    .toString();
}
