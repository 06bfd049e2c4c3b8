// Brackets and braces: as many as the gang's length asks for at the greatest spacing, and one more where both
// ends take one; one shoe a brace.
import type { RuleTables } from '../catalogue/rules.ts';
import { type RuleResult, shown, type Taken } from './findings.ts';
import type { Gang } from './placed.ts';

export function takeBrackets({ widthNm }: Gang, { brackets }: RuleTables): RuleResult {
  if (brackets === undefined) return { taken: [], findings: [] };
  const { component, maximumSpacingNm, atEachEnd = false } = brackets;
  const taken = spaced(component, 'brackets', widthNm, maximumSpacingNm, atEachEnd);
  return { taken: [taken], findings: [] };
}

export function takeBraces({ widthNm }: Gang, { braces }: RuleTables): RuleResult {
  if (braces === undefined) return { taken: [], findings: [] };
  const { component, maximumSpacingNm, atEachEnd = false, shoe } = braces;
  const taken = spaced(component, 'braces', widthNm, maximumSpacingNm, atEachEnd);
  if (shoe === undefined) return { taken: [taken], findings: [] };
  const shoes: Taken = { component: shoe, rule: 'braces.shoe', count: taken.count, where: 'one a brace' };
  return { taken: [taken, shoes], findings: [] };
}

function spaced(
  component: string,
  rule: string,
  widthNm: number,
  spacingNm: number,
  atEachEnd: boolean,
): Taken {
  // Whole numbers under 2^53, so the remainder and the quotient are exact.
  const spaces = Math.floor(widthNm / spacingNm) + (widthNm % spacingNm === 0 ? 0 : 1);
  const ends = atEachEnd ? ', one at each end' : '';
  const where = `length ${shown(widthNm)} at most ${shown(spacingNm)} apart${ends}`;
  return { component, rule, count: spaces + (atEachEnd ? 1 : 0), where };
}
