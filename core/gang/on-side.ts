// Panels on their side: one whose own width is under the limit may stand only at the top or bottom of the gang.
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import { type Finding, shown } from './findings.ts';
import type { Gang } from './placed.ts';

export function findOnSide({ panels, extent }: Gang, rules: RuleTables): readonly Finding[] {
  const table = rules.onSide;
  if (table === undefined) return [];
  const source = ruleSource(rules, 'onSide.narrowerThan');
  return panels
    .filter(
      (standing) =>
        standing.onSide &&
        standing.panel.widthNm < table.narrowerThanNm &&
        !(table.onlyAt.includes('top') && standing.topNm === extent.topNm) &&
        !(table.onlyAt.includes('bottom') && standing.bottomNm === extent.bottomNm),
    )
    .map(({ panel, leftNm, bottomNm }) => ({
      rule: 'onSide',
      severity: 'stop' as const,
      message: `Panel ${panel.code} on its side is ${shown(panel.widthNm)} wide, under ${shown(table.narrowerThanNm)}: it may stand only at the ${table.onlyAt.join(' or ')} of the gang.`,
      where: { xNm: leftNm, yNm: bottomNm },
      source,
    }));
}
