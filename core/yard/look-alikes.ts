// Components that are taken for each other: of one kind, alike in one measure and near in the other, or of two owners.
// They are counted side by side, with what tells them apart.
import type { LookAlike } from './stock-count.ts';

/** How near two measures are to look alike, in percent of the greater. Common practice, no source. */
export const nearPercent = 20;

/** What the catalogue knows of a component's size. */
export interface Measured {
  readonly component: string;
  readonly kind: string;
  readonly widthNm: number | null;
  readonly heightNm: number | null;
  readonly lengthNm: number | null;
}

/** The measurement by which two differ. */
export interface TellApart {
  readonly measure: 'width' | 'height' | 'length';
  readonly componentNm: number;
  readonly otherNm: number;
}

export interface ProposedPair {
  readonly component: string;
  readonly other: string;
  readonly tellApart: TellApart;
}

/** Pairs that nobody has entered, in the order of their codes. */
export function proposedPairs(
  components: readonly Measured[],
  entered: readonly Pick<LookAlike, 'component' | 'other'>[],
): readonly ProposedPair[] {
  const known = new Set(entered.map(({ component, other }) => pairKey(component, other)));
  const sorted = [...components].sort((one, other) => (one.component < other.component ? -1 : 1));
  return sorted.flatMap((one, index) =>
    sorted.slice(index + 1).flatMap((other) => {
      if (one.kind !== other.kind || known.has(pairKey(one.component, other.component))) return [];
      const tellApart = nearMeasure(one, other);
      return tellApart === null ? [] : [{ component: one.component, other: other.component, tellApart }];
    }),
  );
}

function nearMeasure(one: Measured, other: Measured): TellApart | null {
  const differing = differences(one, other);
  const [only] = differing;
  if (differing.length !== 1 || only === undefined) return null;
  const { componentNm, otherNm } = only;
  const greater = Math.max(componentNm, otherNm);
  return Math.abs(componentNm - otherNm) * 100 <= nearPercent * greater ? only : null;
}

/** Measures known of both in which they differ. */
function differences(one: Measured, other: Measured): readonly TellApart[] {
  const both: readonly [TellApart['measure'], number | null, number | null][] = [
    ['width', one.widthNm, other.widthNm],
    ['height', one.heightNm, other.heightNm],
    ['length', one.lengthNm, other.lengthNm],
  ];
  return both.flatMap(([measure, componentNm, otherNm]) =>
    componentNm === null || otherNm === null || componentNm === otherNm
      ? []
      : [{ measure, componentNm, otherNm }],
  );
}

/** What tells two apart by the catalogue: the measure in which they differ the most; null where none does. */
export function differingMeasure(one: Measured, other: Measured): TellApart | null {
  const share = ({ componentNm, otherNm }: TellApart): number =>
    Math.abs(componentNm - otherNm) / Math.max(componentNm, otherNm);
  return differences(one, other).reduce<TellApart | null>(
    (best, each) => (best === null || share(each) > share(best) ? each : best),
    null,
  );
}

/** Components that lie here for two owners or more: only the mark tells those apart. */
export function ofTwoOwners(
  stock: readonly { readonly component: string; readonly owner: string; readonly quantity: number }[],
): readonly { readonly component: string; readonly owners: readonly string[] }[] {
  const owners = new Map<string, Set<string>>();
  for (const { component, owner, quantity } of stock) {
    if (quantity <= 0) continue;
    owners.set(component, (owners.get(component) ?? new Set()).add(owner));
  }
  return [...owners]
    .filter(([, of]) => of.size > 1)
    .map(([component, of]) => ({ component, owners: [...of].sort() }))
    .sort((one, other) => (one.component < other.component ? -1 : 1));
}

/** For each component those that are taken for it. */
export function partnersOf(
  pairs: readonly Pick<LookAlike, 'component' | 'other'>[],
): ReadonlyMap<string, readonly string[]> {
  const partners = new Map<string, string[]>();
  const add = (one: string, other: string): void => {
    partners.set(one, [...(partners.get(one) ?? []), other]);
  };
  for (const { component, other } of pairs) {
    add(component, other);
    add(other, component);
  }
  return partners;
}

function pairKey(one: string, other: string): string {
  return JSON.stringify(one < other ? [one, other] : [other, one]);
}
