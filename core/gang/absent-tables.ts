// What no table takes off is said, so that nobody takes its absence for a zero; and so is a piece without a weight.
import { ruleNames, type RuleTables } from '../catalogue/rules.ts';
import type { Finding } from './findings.ts';
import type { Gang } from './placed.ts';
import type { TakeOffLine } from './weights.ts';

const whatIsAbsent: Readonly<Record<(typeof ruleNames)[number], string>> = {
  locks: 'locks are',
  fillerLocks: 'adjustable locks over fillers are',
  rails: 'stiffening rails and their bolts are',
  hooks: 'lifting hooks are',
  onSide: 'panels on their side are',
  brackets: 'walkway brackets are',
  braces: 'braces are',
  ties: 'holes for ties are',
};

export function absentTables(rules: RuleTables): readonly Finding[] {
  return ruleNames
    .filter((name) => rules[name] === undefined)
    .map((name) => ({
      rule: name,
      severity: 'note' as const,
      message: `There is no rule table for this: ${whatIsAbsent[name]} not ${name === 'onSide' ? 'checked' : 'taken off'}.`,
      where: name,
    }));
}

/** The weight is too little by every piece whose weight is entered as zero; told at the first such panel. */
export function weightless(
  { panels }: Pick<Gang, 'panels'>,
  lines: readonly TakeOffLine[],
): readonly Finding[] {
  return lines
    .filter((line) => line.weightGrams === 0)
    .map(({ component, quantity }): Finding => {
      const standing = panels.find(({ panel }) => panel.code === component);
      return {
        rule: 'weights.zero',
        severity: 'caution',
        message: `${component} weighs nothing in the catalogue: the weight lacks ${quantity} of them.`,
        where:
          standing === undefined
            ? `component ${component}`
            : { xNm: standing.leftNm, yNm: standing.bottomNm },
      };
    });
}
