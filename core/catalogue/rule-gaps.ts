// Gaps in rule tables: joints or gangs for which a table has no answer, or an answer that cannot be meant. Each
// would come up gang by gang as a finding; whoever saves the tables is told at once.
import { refuse, type Refusal } from '../answer.ts';
import { formatLengthMetric } from '../units/length.ts';
import type { Component, ComponentKind } from './component.ts';
import { strayPlaces } from './rule-sources.ts';
import type { Band, RailTable, RuleTables } from './rules.ts';

export function ruleGaps(rules: RuleTables, components: readonly Component[]): readonly Refusal[] {
  const { locks, fillerLocks, rails, placingRails } = rules;
  const leastNm = locks?.minimumStretchNm ?? 0;
  return [
    ...(locks === undefined ? [] : bandGaps('locks.bands', locks.bands, leastNm)),
    ...(fillerLocks?.bands === undefined ? [] : bandGaps('fillerLocks.bands', fillerLocks.bands, leastNm)),
    ...railGaps('rails', rails, components),
    ...railGaps('placingRails', placingRails, components),
    ...platformGaps(rules, components),
    ...strayPlaces(rules),
  ];
}

function bandGaps(place: string, bands: readonly Band[], leastNm: number): readonly Refusal[] {
  return bands.flatMap(({ upToNm, count }, row): readonly Refusal[] => {
    const before = bands[row - 1]?.count ?? 0;
    const at = `${place}[${row}]`;
    const upTo = formatLengthMetric(upToNm);
    if (upToNm < leastNm) {
      const message = `No joint takes the row to ${upTo}: under ${formatLengthMetric(leastNm)} a joint takes no lock.`;
      return [refuse('rule-row-not-reached', message, { field: `${at}.upTo` }).error];
    }
    if (count === 0) {
      const message = `Joints to ${upTo} would take no lock and nothing would be said of them.`;
      const hint = 'Maybe say by the least stretch which joints take none.';
      return [refuse('rule-gap', message, { field: `${at}.count`, hint }).error];
    }
    if (count >= before) return [];
    const message = `${at}.count goes down: a joint to ${upTo} would take ${count}, a shorter one ${before}.`;
    const hint = 'Maybe two counts were swapped.';
    return [refuse('rule-count-falling', message, { field: `${at}.count`, hint }).error];
  });
}

function railGaps(
  name: 'rails' | 'placingRails',
  table: RailTable | undefined,
  components: readonly Component[],
): readonly Refusal[] {
  if (table === undefined) return [];
  const lengths = lengthsOf('stiffening-rail', components);
  const longest = Math.max(0, ...lengths);
  const clearNm = 2 * (table.boltClearanceNm ?? 0);
  return table.lengths.flatMap(({ gangUpToNm, minimumNm }, row): readonly Refusal[] => {
    const field = `${name}.lengths[${row}].minimum`;
    const [upTo, minimum] = [formatLengthMetric(gangUpToNm), formatLengthMetric(minimumNm)];
    const before = table.lengths[row - 1];
    const serving = Math.min(...lengths.filter((length) => length >= minimumNm));
    if (minimumNm > longest || longest === 0) {
      const message = `Gangs up to ${upTo} would have no rails: none of the catalogue is ${minimum} or longer, the longest is ${formatLengthMetric(longest)}.`;
      return [refuse('rule-gap', message, { field }).error];
    }
    if (before !== undefined && minimumNm < before.minimumNm) {
      const message = `${field} goes down: gangs up to ${upTo} could take shorter rails than lower ones.`;
      const hint = 'Maybe two rows were swapped.';
      return [refuse('rule-minimum-falling', message, { field, hint }).error];
    }
    if (table.cover === 'each-joint' && serving < clearNm) {
      const message = `Gangs up to ${upTo} take rails of ${formatLengthMetric(serving)}, shorter than twice the bolts' clearance of ${formatLengthMetric(clearNm / 2)}.`;
      return [refuse('rule-rail-shorter-than-clearance', message, { field }).error];
    }
    return [];
  });
}

function platformGaps({ brackets }: RuleTables, components: readonly Component[]): readonly Refusal[] {
  if (brackets?.platform === undefined) return [];
  const { planksWide, guardrailRows = 0, post, postsPerBracket } = brackets.platform;
  const wanted: readonly (readonly [ComponentKind, string, number])[] = [
    ['plank', 'planksWide', planksWide],
    ['guardrail', 'guardrailRows', guardrailRows],
  ];
  const missing = wanted
    .filter(([kind, , rows]) => rows > 0 && lengthsOf(kind, components).length === 0)
    .map(([kind, key]): Refusal => {
      const message = `The platform asks for ${kind}s, and the catalogue has none of a known length.`;
      return refuse('rule-gap', message, { field: `brackets.platform.${key}` }).error;
    });
  if (post !== undefined || postsPerBracket === undefined || postsPerBracket === 0) return missing;
  const message = `The platform asks for ${postsPerBracket} posts a bracket, and no post is named.`;
  return [...missing, refuse('rule-gap', message, { field: 'brackets.platform.post' }).error];
}

function lengthsOf(kind: ComponentKind, components: readonly Component[]): readonly number[] {
  return components.flatMap((item) =>
    item.kind === kind && item.lengthNm !== undefined && item.lengthNm > 0 ? [item.lengthNm] : [],
  );
}
