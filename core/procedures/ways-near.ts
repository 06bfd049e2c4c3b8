// Pieces that are nearly those that are short: of the same kind and system, the next size up and down of which there are some
// to spare all through the stretch. They are named for the designer to be asked and never put in place of anything.
import type { BookComponent } from '../book/book.ts';
import { found } from './by-code.ts';
import { spareIn } from './ways-hire.ts';
import type { WaysAnswer } from './ways-shapes.ts';
import type { WaysQuestion } from './ways-trial.ts';

export function nearItems({ plan, shortfall }: WaysQuestion): WaysAnswer['ask'] {
  const { components } = plan.facts;
  const own = found(components, shortfall.component);
  const spared = [...components.values()]
    .filter((other) => isLike(own, other))
    .map((other) => ({ other, by: difference(own, other) }))
    .toSorted((one, other) => size(one.by) - size(other.by));
  const next = [spared.find(({ by }) => sign(by) >= 0), spared.find(({ by }) => sign(by) < 0)];
  return next.flatMap((each) => {
    if (each === undefined) return [];
    const spare = spareIn(plan, each.other.code, shortfall);
    return spare > 0 ? [{ component: each.other.code, name: each.other.name, spare }] : [];
  });
}

function isLike(own: BookComponent, other: BookComponent): boolean {
  return (
    own.code !== other.code &&
    own.kind === other.kind &&
    own.kind !== 'other' &&
    own.system === other.system &&
    measures.some((measure) => own[measure] !== undefined && other[measure] !== undefined)
  );
}

const measures = ['widthNm', 'heightNm', 'lengthNm'] as const;

function difference(own: BookComponent, other: BookComponent): readonly number[] {
  return measures.map((measure) => (other[measure] ?? 0) - (own[measure] ?? 0));
}

function size(by: readonly number[]): number {
  return by.reduce((sum, each) => sum + Math.abs(each), 0);
}

function sign(by: readonly number[]): number {
  return by.reduce((sum, each) => sum + each, 0);
}
