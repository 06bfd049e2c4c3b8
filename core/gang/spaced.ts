// Brackets and braces: as many as the gang's length asks for at the greatest spacing, and one more where both
// ends take one; one shoe a brace; with brackets the platform that they carry.
import type { Component } from '../catalogue/component.ts';
import type { RuleTables } from '../catalogue/rules.ts';
import { nothingTaken, type PointNm, type RuleResult, shown, type Taken } from './findings.ts';
import type { Gang } from './placed.ts';
import { takePlatform } from './platform.ts';

export interface Spaced extends RuleResult {
  readonly places: readonly PointNm[];
}

/** Brackets hang at the top edge. */
export function takeBrackets(gang: Gang, components: readonly Component[], rules: RuleTables): Spaced {
  const table = rules.brackets;
  if (table === undefined) return { ...nothingTaken, places: [] };
  const { taken, places } = spaced(gang, table, 'brackets', gang.extent.topNm);
  const platform = takePlatform(gang.widthNm, taken.count, components, rules);
  return { taken: [taken, ...platform.taken], findings: platform.findings, places };
}

/** Braces stand at the foot, where their shoes are; none at a gang that is said not to be braced. */
export function takeBraces(gang: Gang, { braces }: RuleTables): Spaced {
  if (braces === undefined || !gang.braced) return { ...nothingTaken, places: [] };
  const { taken, places } = spaced(gang, braces, 'braces', gang.extent.bottomNm);
  if (braces.shoe === undefined) return { taken: [taken], findings: [], places };
  const shoes: Taken = {
    component: braces.shoe,
    rule: 'braces.shoe',
    count: taken.count,
    where: 'one a brace',
  };
  return { taken: [taken, shoes], findings: [], places };
}

/**
 * Evenly over the length: with one at each end, from the left end to the right; else one in the middle of each of
 * as many equal parts, which stands them no farther apart than a part is long.
 */
function spaced(
  { widthNm, extent }: Gang,
  table: { readonly component: string; readonly maximumSpacingNm: number; readonly atEachEnd?: boolean },
  rule: string,
  yNm: number,
): { readonly taken: Taken; readonly places: readonly PointNm[] } {
  const { component, maximumSpacingNm, atEachEnd = false } = table;
  // Whole numbers under 2^53, so the remainder and the quotient are exact.
  const spaces = Math.floor(widthNm / maximumSpacingNm) + (widthNm % maximumSpacingNm === 0 ? 0 : 1);
  const ends = atEachEnd ? ', one at each end' : '';
  const where = `length ${shown(widthNm)} at most ${shown(maximumSpacingNm)} apart${ends}`;
  const count = spaces + (atEachEnd ? 1 : 0);
  const places = Array.from({ length: Math.min(count, mostDrawn) }, (_, index) => ({
    xNm: extent.leftNm + Math.round((widthNm * (atEachEnd ? index : index + 0.5)) / spaces),
    yNm,
  }));
  return { taken: { component, rule, count, where }, places };
}

/** A spacing typed wrongly asks for millions: they are counted, and not all drawn. */
const mostDrawn = 2000;
