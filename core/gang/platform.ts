// The platform that brackets carry: planks and guardrails end to end over the gang's length by the catalogue's
// lengths, the fewest that cover it; posts by the bracket.
import type { Component, ComponentKind } from '../catalogue/component.ts';
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import { nothingTaken, type RuleResult, shown, type Taken } from './findings.ts';
import { allowedLengths, fewestRails } from './rail-lengths.ts';

/** A stop where planks or guardrails are asked for and the catalogue has none of a known length. */
export function takePlatform(
  widthNm: number,
  brackets: number,
  components: readonly Component[],
  rules: RuleTables,
): RuleResult {
  const table = rules.brackets?.platform;
  if (table === undefined) return nothingTaken;
  const { planksWide, post, postsPerBracket = 1, guardrailRows = 0 } = table;
  const planks = endToEnd('plank', 'planksWide', planksWide, widthNm, components, rules);
  const guardrails = endToEnd('guardrail', 'guardrailRows', guardrailRows, widthNm, components, rules);
  const posts: readonly Taken[] =
    post === undefined
      ? []
      : [
          {
            component: post,
            rule: 'brackets.platform.posts',
            count: brackets * postsPerBracket,
            where: `${postsPerBracket} a bracket, ${brackets} brackets`,
          },
        ];
  return {
    taken: [...planks.taken, ...posts, ...guardrails.taken],
    findings: [...planks.findings, ...guardrails.findings],
  };
}

function endToEnd(
  kind: Extract<ComponentKind, 'plank' | 'guardrail'>,
  key: string,
  rows: number,
  widthNm: number,
  components: readonly Component[],
  rules: RuleTables,
): RuleResult {
  if (rows === 0) return nothingTaken;
  const rule = `brackets.platform.${key}`;
  const pieces = fewestRails(allowedLengths(components, kind, 1), widthNm);
  if (typeof pieces === 'string') {
    const message =
      pieces === 'too-many-sets'
        ? `The catalogue's lengths of ${kind}s cover ${shown(widthNm)} in too many ways to compare: none are taken.`
        : `No ${kind}s of the catalogue cover ${shown(widthNm)}, at most 200 in a row: none are taken.`;
    const source = ruleSource(rules, rule);
    return { taken: [], findings: [{ rule, severity: 'stop', message, where: 'platform', source }] };
  }
  const inRow = new Map<string, number>();
  for (const { code } of pieces) inRow.set(code, (inRow.get(code) ?? 0) + 1);
  const how = kind === 'plank' ? 'side by side' : 'one above another';
  return {
    taken: [...inRow].map(([component, count]) => ({
      component,
      rule,
      count: count * rows,
      where: `${count} in a row over ${shown(widthNm)}, ${rows} ${how}`,
    })),
    findings: [],
  };
}
